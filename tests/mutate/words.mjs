/** Leaves out sentences for people and what a rule says of itself. */
/** Golden cases show these byte for byte; examples are tests themselves. */
const aboutRules = ['id', 'question', 'evidence', 'examples', 'since'];

const isSentence = (text) => /\S\s+\S|^\s|\s$/.test(text);

/** Why a place gets no mutants, or undefined. */
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
