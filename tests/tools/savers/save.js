// Opens a workbook with a library and saves it: node save.js LIBRARY FROM TO
"use strict";

const savers = {
  async xlsx(from, to) {
    const library = require("xlsx");
    library.writeFile(library.readFile(from, { cellStyles: true, cellNF: true }), to, { compression: true });
  },
  async exceljs(from, to) {
    const { Workbook } = require("exceljs");
    const book = new Workbook();
    await book.xlsx.readFile(from);
    await book.xlsx.writeFile(to);
  },
};

const [library, from, to] = process.argv.slice(2);
savers[library](from, to).catch((error) => {
  console.error(error);
  process.exitCode = 1;
});
