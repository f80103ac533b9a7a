/** Leaves out of the mutants what other tests hold: sentences shown to people, and what a rule says of itself. */
/** What stands about a rule besides its judging: golden cases show it byte for byte, and examples are tests themselves. */
const aboutRules = ['id', 'question', 'evidence', 'examples', 'since'];

const isSentence = (text) => /\S\s+\S|^\s|\s$/.test(text);

/** Why a place in the code gets no mutants, or undefined where it does. */
function why(path) {
  const { node, parent } = path;
  if (path.isStringLiteral() && isSentence(node.value)) return 'a sentence';
  if (path.isTaggedTemplateExpression() && node.tag.name === 'say') return 'a sentence';
  if (path.isTemplateLiteral() && node.quasis.some(({ value }) => isSentence(value.raw))) return 'a sentence';
  const ofRule = path.isObjectProperty() && path.parentPath?.parentPath?.node.callee?.name === 'rule';
  if (ofRule && parent.type === 'ObjectExpression' && aboutRules.includes(node.key.name))
    return 'about a rule';
  return undefined;
}

export const strykerPlugins = [{ kind: 'Ignore', name: 'words', value: { shouldIgnore: why } }];
