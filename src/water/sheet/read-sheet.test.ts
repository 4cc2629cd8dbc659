import { describe, expect, it } from "vitest";
import { readingsOfSample, readSheet, readSheetCells } from "./read-sheet.ts";
import type { SheetRead } from "./types.ts";

function understood(sheet: SheetRead): readonly string[] {
  return sheet.samples.flatMap((sample) =>
    readingsOfSample(sample).map(({ parameter, value, unit }) => `${parameter} ${value} ${unit}`.trim()),
  );
}
function entryOn(sheet: SheetRead, line: number) {
  const entry = sheet.samples.flatMap((sample) => sample.entries).find((e) => e.line === line);
  if (entry === undefined) throw new Error(`no entry on line ${String(line)}`);
  return entry;
}

describe("readSheet, one line a reading", () => {
  const typed = readSheet(
    [
      "Report 4711",
      "Sample: Top bore",
      "Date sampled: 14/03/2026",
      "Calcium (Ca)      92    mg/L",
      "Magnesium         31    mg/L",
      "Total hardness as CaCO3: 357 mg/L",
      "Iron (dissolved)  <0.05 mg/L",
      "pH   7.6",
      "Conductivity at 25 °C 780 µS/cm",
      "Nitrate 12 mg/L",
      "Arsenic <1 µg/L",
      "Carbonate hardness 12 °dH",
    ].join("\n"),
  );

  it("takes names, values and units from plain lines", () => {
    expect(understood(typed)).toEqual([
      "calcium 92 mg/L",
      "magnesium 31 mg/L",
      "hardness 357 mg/L as CaCO3",
      "iron <0.05 mg/L",
      "pH 7.6",
      "conductivity 780 µS/cm",
    ]);
    expect(typed.samples[0]).toMatchObject({ label: "Top bore", sampled: "2026-03-14" });
  });

  it("asks about a bare nitrate and about a name with two meanings", () => {
    const nitrate = entryOn(typed, 10);
    expect(nitrate.status).toBe("asked");
    expect(nitrate.choices.map((choice) => choice.unit)).toEqual(["mg/L as NO3", "mg/L as N"]);
    const carbonate = entryOn(typed, 12);
    expect(carbonate.status).toBe("asked");
    expect(carbonate.choices.map((choice) => choice.parameter)).toEqual(["alkalinity", "hardness"]);
  });

  it("accounts for every line", () => {
    expect(entryOn(typed, 11).status).toBe("not used");
    expect(typed.other.map((text) => text.line)).toEqual([1, 2, 3]);
  });

  it("reads decimal commas, foreign names and columns in another order", () => {
    const sheet = readSheet(
      [
        "Parameter;Einheit;Ergebnis;Grenzwert",
        "pH-Wert;-;7,42;6,5-9,5",
        "Calcium;mg/l;98,4;",
        "Gesamthärte;°dH;17,3;",
        "Säurekapazität bis pH 4,3;mmol/l;5,12;",
        "Eisen, gesamt;mg/l;0,215;0,200",
        "Natrium;mg/l;1,250;200",
        "Nitrat-N;mg/l;2,1;",
        "E. coli;KBE/100ml;0;0",
      ].join("\r\n"),
    );
    expect(sheet.decimal).toBe(",");
    expect(understood(sheet)).toEqual([
      "pH 7,42 -",
      "calcium 98,4 mg/l",
      "hardness 17,3 °dH",
      "alkalinity 5,12 mmol/l",
      "iron 0,215 mg/l",
      "sodium 1,250 mg/l",
      "nitrate 2,1 mg/l as N",
    ]);
    expect(entryOn(sheet, 6).fraction).toBe("total");
    expect(entryOn(sheet, 9).status).toBe("not used");
  });

  it("asks for a detection limit, a unit and which number is meant", () => {
    const sheet = readSheet("Fer dissous\tn.d.\tmg/L\nMg\t31\t\nIron (Fe)\t1,250\tµg/L\nCa\t1,800\tmg/L");
    expect(entryOn(sheet, 1)).toMatchObject({ status: "asked", parameter: "iron" });
    expect(entryOn(sheet, 1).issues.map((issue) => issue.code)).toEqual(["limit-missing"]);
    expect(entryOn(sheet, 2).choices.map((choice) => choice.unit)).toContain("meq/L");
    expect(entryOn(sheet, 4).choices.map((choice) => choice.value)).toEqual(["1800", "1.8"]);
    const told = readSheet("Ca\t1,800\tmg/L", { decimal: "," });
    expect(told.samples[0]?.entries[0]?.status).toBe("understood");
  });

  it("keeps a second reading of the same thing in view and takes total iron before dissolved", () => {
    const sheet = readSheet(
      "Iron, dissolved\t0.1\tmg/L\nIron, total\t1.4\tmg/L\nNO3-N\t2.1\tmg/L\nNO3\t9.3\tmg/L as NO3",
    );
    expect(understood(sheet)).toEqual(["iron 1.4 mg/L", "nitrate 2.1 mg/L as N"]);
    expect(entryOn(sheet, 1).status).toBe("second");
    expect(entryOn(sheet, 4).status).toBe("second");
  });

  it("does not take a ratio or a percentage for the ion in its name", () => {
    const sheet = readSheet(
      "Sodium adsorption ratio (Na, Ca, Mg) | 1.2 | \nSodium, percent total cations | 54 | %",
    );
    expect(understood(sheet)).toEqual([]);
  });
});

describe("readSheet, decimal commas", () => {
  it("takes no comma of a number or of a name for what parts the cells", () => {
    const sheet = readSheet(
      [
        "Parameter               Einheit    Ergebnis",
        "pH-Wert                 -          7,42",
        "Leitfähigkeit (25 °C) µS/cm        718",
        "Gesamthärte             °dH        18,5",
        "Säurekapazität bis pH 4,3  mmol/l  4,32",
        "Eisen, gesamt           mg/l       <0,02",
        "Natrium                 mg/l       14",
      ].join("\n"),
    );
    expect(understood(sheet)).toEqual([
      "pH 7,42 -",
      "conductivity 718 μS/cm",
      "hardness 18,5 °dH",
      "alkalinity 4,32 mmol/l",
      "iron <0,02 mg/l",
      "sodium 14 mg/l",
    ]);
  });

  it.each([
    "Calcium,98,4,mg/L",
    "Parameter,Result,Unit\nCalcium,98,4,mg/L\nSodium,14,mg/L",
    "Parameter,Unit,Result\nCalcium,mg/L,98,4\nSodium,mg/L,14",
  ])("asks which number stands between commas: %j", (text) => {
    const sheet = readSheet(text);
    const calcium = sheet.samples[0]?.entries.find(({ parameter }) => parameter === "calcium");
    expect(calcium?.status).toBe("asked");
    expect(calcium?.choices.map(({ value, unit }) => `${value} ${unit}`).slice(0, 2)).toEqual([
      "98,4 mg/L",
      "98 mg/L",
    ]);
  });

  it("asks which of the figures of a line is the reading", () => {
    const sheet = readSheet("Calcium  98.4  120  mg/L\nSodium  14 mg/L  200");
    expect(entryOn(sheet, 1).choices.map(({ value }) => value)).toEqual(["98.4", "120"]);
    expect(understood(sheet)).toEqual(["sodium 14 mg/L"]);
  });
});

describe("readSheet, figures that were not detected", () => {
  it("takes a figure with a qualifier that says so as the limit", () => {
    const sheet = readSheet(
      "Analyte,Result,Qual,RL,Units\nIron,0.05,U,0.05,mg/L\nManganese,0.01,J,0.05,mg/L\nZinc,0.02,<,0.02,mg/L",
    );
    expect(understood(sheet)).toEqual(["iron <0.05 mg/L", "manganese 0.01 mg/L", "zinc <0.02 mg/L"]);
  });

  it("asks where no heading says what the letter is", () => {
    const [iron] = readSheet("Iron,0.05,U,mg/L\nCalcium,98.4,,mg/L").samples.flatMap(
      ({ entries }) => entries,
    );
    expect(iron?.status).toBe("asked");
    expect(iron?.choices.map(({ value }) => value)).toEqual(["<0.05", "0.05"]);
  });

  it("reads a line that is parted by a sign of its own", () => {
    const sheet = readSheet("Magnesium 20,6 mg/L\nSodium;14;mg/L\nReport 17, page 2\nWell 3, sampled 2026");
    expect(understood(sheet)).toEqual(["magnesium 20,6 mg/L", "sodium 14 mg/L"]);
    expect(sheet.other.map(({ line }) => line)).toEqual([3, 4]);
  });

  it("reads figures that begin with the mark", () => {
    expect(understood(readSheet("Iron .8 ppm\nManganese <.05 mg/L"))).toEqual([
      "iron .8 ppm",
      "manganese <.05 mg/L",
    ]);
  });
});

describe("readSheet, samples side by side", () => {
  it.each([
    ",Top bore,Rain tank\npH,7.4,6.1\nCalcium mg/L,98,2",
    "             Top bore   Rain tank\npH           7.4        6.1\nCalcium mg/L 98         2",
    ";Unit;Top bore;Rain tank\npH;;7.4;6.1\nCalcium;mg/L;98;2",
  ])("are told by their names alone: %j", (text) => {
    const sheet = readSheet(text);
    expect(sheet.samples.map(({ label }) => label)).toEqual(["Top bore", "Rain tank"]);
    expect(sheet.samples.map((sample) => readingsOfSample(sample).map(({ value }) => value))).toEqual([
      ["7.4", "98"],
      ["6.1", "2"],
    ]);
  });
});

describe("readSheet, lists side by side", () => {
  const BOTH = ["calcium 92 mg/L", "magnesium 31 mg/L", "sodium 50 mg/L", "pH 7.4"];

  it("reads both, told by their headings", () => {
    const sheet = readSheetCells([
      ["Parameter", "Result", "Unit", "Parameter", "Result", "Unit"],
      ["Calcium", "92", "mg/L", "Sodium", "50", "mg/L"],
      ["Magnesium", "31", "mg/L", "pH", "7.4", ""],
    ]);
    expect(sheet.samples).toHaveLength(1);
    expect(understood(sheet)).toEqual(BOTH);
  });

  it("reads both without a heading", () => {
    const sheet = readSheetCells([
      ["Report 17"],
      ["Calcium", "92", "mg/L", "Sodium", "50", "mg/L"],
      ["Magnesium", "31", "mg/L", "pH", "7.4"],
    ]);
    expect(understood(sheet)).toEqual(BOTH);
    expect(entryOn(sheet, 2).raw).toBe("Calcium | 92 | mg/L");
  });

  it("reads three, and what stands above them", () => {
    const sheet = readSheetCells([
      ["Report 17", "Sample: Top bore", "Date sampled:", "2026-03-02"],
      ["Calcium", "92", "mg/L", "Sodium", "50", "mg/L", "Iron", "0.3", "mg/L"],
      ["Magnesium", "31", "mg/L", "Chloride", "80", "mg/L", "pH", "7.4"],
    ]);
    expect(understood(sheet)).toHaveLength(6);
    expect(sheet.samples[0]).toMatchObject({ label: "Top bore", sampled: "2026-03-02" });
  });

  it("takes a column of bases and limits for no second list", () => {
    const rows = [
      ["Nitrate", "12", "mg/L", "NO3", "50"],
      ["Phosphate", "0.3", "mg/L", "PO4", "5"],
    ];
    for (const heading of [[], [["Parameter", "Result", "Unit", "Basis", "Limit"]]]) {
      const sheet = readSheetCells([...heading, ...rows]);
      expect(sheet.samples.flatMap(({ entries }) => entries).map(({ value }) => value)).toEqual([
        "12",
        "0.3",
      ]);
    }
  });
});

describe("readSheet, one line a sample", () => {
  it("reads units from the headings", () => {
    const sheet = readSheet(
      "Site,Date,Ca (mg/L),Fe µg/L,pH,EC (dS/m)\nWell 1,2026-03-02,92,<20,7.4,0.78\nWell 2,2026-03-03,20,850,6.9,0.21",
    );
    expect(sheet.layout).toBe("one line a sample");
    expect(sheet.samples.map((sample) => [sample.label, sample.sampled])).toEqual([
      ["Well 1", "2026-03-02"],
      ["Well 2", "2026-03-03"],
    ]);
    expect(readingsOfSample(sheet.samples[1]!).map((reading) => reading.value)).toEqual([
      "20",
      "850",
      "6.9",
      "0.21",
    ]);
  });

  it("reads units from a line of units and from spreadsheet cells", () => {
    const sheet = readSheetCells([
      ["Sample", "Ca", "Mg", "Cl", "pH"],
      ["", "meq/L", "meq/L", "mmol/L", ""],
      ["A", "4.6", "2.5", "1.1", "7.2"],
    ]);
    expect(understood(sheet)).toEqual([
      "calcium 4.6 meq/L",
      "magnesium 2.5 meq/L",
      "chloride 1.1 mmol/L",
      "pH 7.2",
    ]);
  });

  it("asks once for all bare concentrations", () => {
    const text = "Sample,Ca,Mg,Na\nA,4.6,2.5,1.1";
    expect(understood(readSheet(text))).toEqual([]);
    expect(understood(readSheet(text, { bareUnit: "meq/L" }))).toEqual([
      "calcium 4.6 meq/L",
      "magnesium 2.5 meq/L",
      "sodium 1.1 meq/L",
    ]);
  });
});

describe("readSheet, a figure with a footnote", () => {
  it.each(["92¹", "92 1", "92⁽¹⁾"])("asks about %s and never reads 921", (value) => {
    const [entry] = readSheetCells([["Calcium", value, "mg/L"]]).samples.flatMap(({ entries }) => entries);
    expect(entry?.status).toBe("asked");
  });
});

describe("readSheet, limits and the like beside the results", () => {
  it.each([
    ["Parameter;Grenzwert TrinkwV;Ergebnis;Einheit", "Natrium;200;11,5;mg/l"],
    ["Parametro;Limite di legge;Risultato;Unità di misura", "Sodio;200;11,5;mg/l"],
    ["Parameter;Requirement;Found;Unit", "Sodium;≤ 200;11,5;mg/L"],
    ["Contaminant;MCL;Level Detected;Units", "Sodium;200;11,5;ppm"],
    ["Paramètre;Limite de qualité;Résultat;Unité;Incertitude", "Sodium;200;11,5;mg/L;± 5 %"],
    ["Parameter;Unit;Result ± uncertainty;Limit value", "Sodium;mg/L;11,5 ± 0,6;200"],
    ["Parameter;Symbol;Unit;Min;Max;Result", "Sodium;Na;mg/L;0;200;11,5"],
    ["Paramètre;LQ;Valeur;Unité;Norme", "Sodium;0,5;11,5;mg(Na)/L;200"],
    ["Parámetro;Valor límite;Resultado;Unidades", "Sodio;200;11,5;mg/L"],
    // Cut off in a narrow column, or parted by how its letters were set.
    ["Parameter;Grenzwer;Ergebni;Einheit", "Natrium;200;11,5;mg/l"],
    ["Bezeichnung;Richtwer t;Wer t;Einheit", "Natrium;200;11,5;mg/l"],
  ])("are never taken for one: %s", (heading, line) => {
    const sheet = readSheet(`${heading}\n${line}`, { decimal: "," });
    expect(sheet.samples.flatMap(({ entries }) => entries)).toHaveLength(1);
    expect(understood(sheet).map((reading) => reading.split(" ").slice(0, 2).join(" "))).toEqual([
      "sodium 11,5",
    ]);
  });

  it("take no part where several samples stand side by side", () => {
    const sheet = readSheet(
      "Parameter;Einheit;Brunnen 1;Brunnen 2;Grenzwert TrinkwV\nNatrium;mg/l;48,1;12,4;200\nChlorid;mg/l;61;22;250",
    );
    expect(sheet.samples.map(({ label }) => label)).toEqual(["Brunnen 1", "Brunnen 2"]);
    expect(understood(sheet)).toEqual([
      "sodium 48,1 mg/l",
      "chloride 61 mg/l",
      "sodium 12,4 mg/l",
      "chloride 22 mg/l",
    ]);
  });

  it.each([
    ["headings that ran together", "Parameter\tSpecificationResult\nChloride (mg/L)\t250\t61"],
    ["a result with a word behind it", "Chloride (mg/L)\t250\t61 Pass"],
    ["a result with a footnote that ran into it", "Chloride\t611)\tmg/L\t250"],
    [
      "columns that ran together",
      "Parameter   Result   Limit   Method\nChloride (mg/L)    31 250          IC",
    ],
  ])("are asked about: %s", (_what, text) => {
    const sheet = readSheet(text);
    expect(understood(sheet)).toEqual([]);
    expect(sheet.samples[0]?.entries[0]?.status).toBe("asked");
  });

  it("take the first of columns that hold one figure in several units", () => {
    const sheet = readSheet("Constituent\tmg/L\tmeq/L\nCalcium\t92.0\t4.59\nSodium\t\t2.09");
    expect(understood(sheet)).toEqual(["calcium 92.0 mg/L", "sodium 2.09 meq/L"]);
  });
});

describe("readSheet, names with something behind them", () => {
  it.each([
    ["Elektrische Leitfähigkeit bei 25 °C", "µS/cm", "conductivity"],
    ["Conductividad eléctrica a 25 °C", "µS/cm", "conductivity"],
    ["pH à 20 °C", "", "pH"],
    ["Calcium 1)", "mg/L", "calcium"],
    ["Magnesium²", "mg/L", "magnesium"],
    ["Magnesium2", "mg/L", "magnesium"],
    ["Sulfate (**)", "mg/L", "sulfate"],
    ["SO42-", "mg/L", "sulfate"],
    ["Gesamthär te", "°dH", "hardness"],
  ])("%s", (name, unit, parameter) => {
    const [entry] = readSheetCells([[name, "7.5", unit]]).samples.flatMap(({ entries }) => entries);
    expect(entry).toMatchObject({ status: "understood", parameter, value: "7.5" });
  });

  it.each(["Conductivity @ 20C", "Leitfähigkeit (20 °C)", "Conductivité à 20 °C"])(
    "asks about a conductivity at another temperature: %s",
    (name) => {
      const [entry] = readSheetCells([[name, "702", "µS/cm"]]).samples.flatMap(({ entries }) => entries);
      expect(entry).toMatchObject({ status: "asked", parameter: null });
      expect(entry?.choices.map(({ parameter }) => parameter)).toEqual(["conductivity"]);
    },
  );

  it("takes iron of a given charge for no iron with a footnote", () => {
    expect(understood(readSheet("Iron 3\t0.4\tmg/L\nFe3\t0.4\tmg/L"))).toEqual([]);
  });
});

describe("readSheet, one line a sample on a printed page", () => {
  const HEAD = ["Sample", "Ca", "Mg", "Na"];
  const UNITS = ["", "mg/L", "mg/L", "mg/L"];
  const FIRST = ["Bore", "92", "31", "48"];

  it("takes headings said again and the foot of a page for no sample", () => {
    const sheet = readSheetCells([
      ...[HEAD, UNITS, FIRST],
      ["report.html", "", "", "1/2"],
      ...[HEAD, UNITS, ["Tank", "3", "1", "4"]],
    ]);
    expect(sheet.samples.map(({ label }) => label)).toEqual(["Bore", "Tank"]);
    expect(sheet.other.map(({ line }) => line)).toEqual(expect.arrayContaining([4, 5, 6]));
  });

  it("takes figures that a long cell pushed on in their order, if each has a heading", () => {
    const sheet = readSheetCells([HEAD, UNITS, ["Bore at the far end", "", "92", "31", "48"]]);
    expect(understood(sheet)).toEqual(["calcium 92 mg/L", "magnesium 31 mg/L", "sodium 48 mg/L"]);
    expect(understood(readSheetCells([HEAD, UNITS, ["Bore at the far end", "", "92", "", "48"]]))).toEqual(
      [],
    );
  });
});

describe("readSheet, odd input", () => {
  it("finds nothing in nothing and never throws", () => {
    for (const text of [
      "",
      "\n\n",
      "\uFEFF",
      ";;;\n;;;",
      '"',
      "\u0000\u0001",
      "a".repeat(100_000),
      "1\t2\t3\n4\t5\t6",
    ]) {
      expect(understood(readSheet(text))).toEqual([]);
    }
  });
});
