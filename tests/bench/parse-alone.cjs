// The backlog's yardstick: only parses the same files with the yaml package.
const { readdirSync, readFileSync } = require('node:fs');
const { parse } = require('yaml');

const folder = process.argv[2];
for (const inner of readdirSync(folder).sort()) {
  for (const file of readdirSync(`${folder}/${inner}`).sort()) {
    parse(readFileSync(`${folder}/${inner}/${file}`, 'utf8'));
  }
}
