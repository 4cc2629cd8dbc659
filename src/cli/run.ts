import { builtInThermo } from "../chem/index.ts";
import { HARDSTAND_VERSION, builtInTrade } from "../agronomy/index.ts";
import { readArguments } from "./arguments.ts";
import { complaintCommand } from "./complaint-command.ts";
import { EXIT } from "./exit.ts";
import { flasksCommand } from "./flasks-command.ts";
import { HELP } from "./help.ts";
import type { CliIo } from "./io.ts";
import { planCommand } from "./plan-command.ts";
import { sheetCommand } from "./sheet-command.ts";
import { speciateCommand } from "./speciate-command.ts";
import { waterCommand } from "./water-command.ts";

/**
 * Runs the command line.
 *
 * @param argv arguments after the name of the program
 * @returns the exit code: 0 done, 2 bad input, 3 no programme meets the aim, 4 outside the fitted range under
 * `--strict`
 */
export async function runCli(argv: readonly string[], io: CliIo): Promise<number> {
  const request = readArguments(argv);
  switch (request.kind) {
    case "help":
      io.stdout(HELP);
      return EXIT.done;
    case "version":
      io.stdout(
        `hardstand ${HARDSTAND_VERSION}, data ${builtInThermo().version}+${builtInTrade().version}\n`,
      );
      return EXIT.done;
    case "wrong":
      io.stderr(`${request.message}\nhardstand --help shows how it is used.\n`);
      return EXIT.badInput;
    case "plan":
      return planCommand(request.job, request, io);
    case "water":
      return waterCommand(request.job, request.json, request.strict, io);
    case "complaint":
      return complaintCommand(request.record, request, io);
    case "sheet":
      return sheetCommand(request.file, request.json, io);
    case "speciate":
      return speciateCommand(request.case, request.strict, io);
    case "flasks":
      return flasksCommand(request.demo, request, io);
    case "serve":
      return serveCommand(request.port, io);
  }
}

async function serveCommand(port: number | null, io: CliIo): Promise<number> {
  try {
    await io.serve(port);
    return EXIT.done;
  } catch (error) {
    io.stderr(`The page could not be served: ${error instanceof Error ? error.message : String(error)}.\n`);
    return EXIT.failed;
  }
}
