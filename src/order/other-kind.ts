/** Reports a file of another kind once, not key by key. */
import type { Loaded } from '../yaml/load.ts';
import type { Problem } from '../yaml/problem.ts';

const ofOrders = ['horse', 'saddle'];
const ofShops = ['buckles', 'cord', 'strands', 'labor', 'benches'];

/** undefined when it may be right. */
export function otherKind(loaded: Loaded, wanted: 'order' | 'shop'): Problem | undefined {
  const { tree, locate, top } = loaded;
  if (typeof tree !== 'object' || Array.isArray(tree)) return undefined;
  const has = (keys: readonly string[]): boolean => keys.some((key) => key in tree);
  const say = (found: string, hint: string): Problem =>
    locate({ path: '', found, expected: wanted === 'order' ? 'an order' : 'a shop', hint }, []);
  if (top('schema')?.startsWith('cinchwright/') === true) {
    return say('our own output', 'name the order files instead');
  }
  if (wanted === 'order' && has(ofShops) && !has(ofOrders)) {
    return say('a shop file', 'pass a shop file with --shop');
  }
  if (wanted === 'shop' && has(ofOrders) && !has(ofShops)) {
    return say('an order', 'to start a shop file, copy examples/shop.yaml');
  }
  return undefined;
}
