// Validates a data package: its descriptor against the profile, and every row of every table
// against types, constraints, primary and foreign keys. Prints one line per fault.
'use strict';
const { Package } = require('datapackage');

async function faults(path) {
  const found = [];
  const tell = (where, e) =>
    (e.multiple ? e.errors : [e]).forEach((one) => found.push(`${where}: ${one.message}`));
  const pack = await Package.load(path);
  pack.errors.forEach((e) => tell('datapackage.json', e));
  let rows = 0;
  for (const resource of pack.resources) {
    try {
      rows += (await resource.read()).length;
      await resource.checkRelations();
    } catch (e) {
      tell(resource.name, e);
    }
  }
  return { found, rows, tables: pack.resources.length };
}

faults(process.argv[2]).then(
  ({ found, rows, tables }) => {
    found.forEach((fault) => console.log(fault));
    console.log(`${tables} tables, ${rows} rows, ${found.length} faults`);
    process.exitCode = found.length === 0 ? 0 : 1;
  },
  (e) => {
    console.log(String(e));
    process.exitCode = 3;
  },
);
