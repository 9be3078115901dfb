#include "app/cli/commands.h"

#include <CLI/CLI.hpp>

namespace {

using namespace afterbeat;
using namespace afterbeat::cli;

/// Options that decide how figures are computed.
void addSettings(CLI::App& command, SettingWords& words) {
  command.add_option("--profile", words.profile,
                     "Guideline whose targets are used: an id, or a file of your own");
  command
      .add_option("--pause-threshold", words.pauseThreshold,
                  "Hands off longer than this counts as a pause, seconds (0.5 to 5)")
      ->capture_default_str();
  command
      .add_option("--window-end", words.windowEnd,
                  "Where counting ends: last_activity or record_end")
      ->capture_default_str();
}

void addDeriveMode(CLI::App& command, std::string& word) {
  command
      .add_option(
          "--derive", word,
          "Use what the waveforms say: auto (kinds the record holds none of), never, always")
      ->check(CLI::IsMember({"auto", "never", "always"}))
      ->capture_default_str();
}

/// What was typed.
struct Typed {
  std::vector<std::string> checkFiles;
  MeasureOptions measure;
  CompareOptions compare;
  SheetCommand sheet;
  GatherOptions gather;
  DeriveCommand derive;
  RewriteOptions rewrite;
  TakeInCommand takeIn;
};

void addGather(CLI::App& app, GatherOptions& options) {
  auto* command = app.add_subcommand(
      "gather", "Merge sources of one case (event logs, WFDB records, CSV notes) into one log");
  command
      ->add_option("SOURCE[@OFFSET_S]", options.sources,
                   "A source, and what is added to its times in seconds")
      ->required();
  command->add_option("-o,--output", options.output, "The log to write")->required();
  command->add_option("--kind", options.kind, "Say what it was: rescue, drill or test")
      ->check(CLI::IsMember({"rescue", "drill", "test"}));
  command->add_option("--time-column", options.columns.time, "CSV: heading or number of the times");
  command->add_option("--what-column", options.columns.what,
                      "CSV: heading or number of what happened");
  command->add_option("--value-column", options.columns.value,
                      "CSV: heading or number of the values");
  command->add_option("--remark-column", options.columns.remark,
                      "CSV: heading or number of the remarks");
}

void addDerive(CLI::App& app, DeriveCommand& options) {
  auto* command = app.add_subcommand(
      "derive", "Write a log with what its waveforms say: a reviewer's aid, not a diagnosis");
  command->add_option("FILE", options.file, "Event log")->required();
  command->add_option("-o,--output", options.output, "The log to write")->required();
  command
      ->add_option("--what", options.what,
                   "What to derive, separated by commas; all unless named here")
      ->delimiter(',')
      ->check(CLI::IsMember({"compressions", "ventilations", "rhythm"}));
}

void addCompare(CLI::App& app, CompareOptions& options) {
  auto* command = app.add_subcommand(
      "compare",
      "Compare many records: where time is lost, whether it gets better, what to look at");
  command->add_option("FILE", options.files,
                      "Event logs, and folders of them; either these or --archive");
  command->add_option("--archive", options.archive,
                      "An archive: a file, or service:NAME. Its figures are read, not computed: "
                      "one that holds none with these settings is refused");
  auto* csv = command->add_flag("--csv", options.csv, "Print a line of CSV for each record");
  command->add_flag("--json", options.json, "Print JSON")->excludes(csv);
  command->add_option("--report", options.report, "Write the report as PDF into this file");
  command->add_option("--page", options.page,
                      "Write the report as HTML into this one file, which opens without a network");
  command->add_option("--pictures", options.pictures,
                      "Write each chart as SVG and PNG into this folder");
  command->add_option(
      "--only", options.only,
      "Take records that hold all of these words, or parts of words, in site, team, "
      "kind, day, …: \"ferry drill 2026-03\"; also \"with a shock\", \"without a shock\", "
      "2026-Q1, 2026-03..2026-05");
  command->add_option(
      "--step", options.steps,
      "Mark a day from which on something was new: 2026-04-01=WORDS; without one, the "
      "marks that an archive holds are taken");
  command->add_flag("--without-identity", options.withoutIdentity,
                    "No names, serials, ids, files or free text; sites, teams and records as "
                    "pseudonyms, days cut to months");
  command->add_option("--secret", options.secret,
                      "File of the secret that pseudonyms are made with (made if there is none): "
                      "the same secret gives the same pseudonyms. Keep it private. Without it an "
                      "archive's own secret is used; for files pseudonyms hold for one run");
  command->add_option("--paper", options.paper, "A4 or Letter")
      ->check(CLI::IsMember({"A4", "Letter"}))
      ->capture_default_str();
  command->add_option("--language", options.language, "Language of report and charts: en or de")
      ->check(CLI::IsMember({"en", "de"}))
      ->capture_default_str();
  addDeriveMode(*command, options.derive);
  addSettings(*command, options.settings);
}

void addTakeIn(CLI::App& app, TakeInCommand& options) {
  auto* command = app.add_subcommand(
      "take-in", "Take recordings into an archive of many, and bring its figures up to date");
  command->add_option("FILE|FOLDER", options.sources,
                      "Recordings, and folders that are looked through; none: what is there");
  command
      ->add_option("--archive", options.archive,
                   "The archive: a file, made where there is none, or service:NAME (PostgreSQL)")
      ->required();
  command->add_flag("--keep-files", options.keepFiles, "Keep the event logs themselves as well");
  command->add_flag("--moved", options.moved,
                    "List what is another figure under other settings or definitions");
  addDeriveMode(*command, options.derive);
  addSettings(*command, options.settings);
}

void addCommands(CLI::App& app, Typed& typed) {
  auto* check = app.add_subcommand("check", "Say what is wrong with event logs");
  check->add_option("FILE", typed.checkFiles, "Event logs")->required();

  auto* measure = app.add_subcommand("measure", "Print the figures of event logs");
  measure->add_option("FILE", typed.measure.files, "Event logs")->required();
  measure->add_flag("--json", typed.measure.json, "Print JSON");
  addDeriveMode(*measure, typed.measure.derive);
  addSettings(*measure, typed.measure.settings);

  auto* sheet = app.add_subcommand("sheet", "Write the handover sheet, one page of PDF");
  sheet->add_option("FILE", typed.sheet.file, "Event log")->required();
  sheet->add_option("-o,--output", typed.sheet.output, "The PDF to write")->required();
  sheet->add_option("--paper", typed.sheet.paper, "A4 or Letter")
      ->check(CLI::IsMember({"A4", "Letter"}))
      ->capture_default_str();
  sheet->add_option("--language", typed.sheet.language, "Language of the sheet: en or de")
      ->check(CLI::IsMember({"en", "de"}))
      ->capture_default_str();
  addDeriveMode(*sheet, typed.sheet.derive);
  addSettings(*sheet, typed.sheet.settings);

  addCompare(app, typed.compare);
  addGather(app, typed.gather);
  addDerive(app, typed.derive);
  addTakeIn(app, typed.takeIn);

  auto* rewrite = app.add_subcommand("rewrite", "Read, salvage, write canonically and seal");
  rewrite->add_option("FILE", typed.rewrite.file, "Event log")->required();
  rewrite->add_option("-o,--output", typed.rewrite.output, "The log to write")->required();
  rewrite
      ->add_option("--new-header", typed.rewrite.newHeader,
                   "For a log without a usable header: make one up, of this kind")
      ->check(CLI::IsMember({"rescue", "drill", "test"}));
}

Exit run(const CLI::App& app, const Typed& typed, int argc, char** argv) {
  if (app.got_subcommand("check")) {
    return check(typed.checkFiles);
  }
  if (app.got_subcommand("measure")) {
    return measure(typed.measure);
  }
  if (app.got_subcommand("compare")) {
    return compare(typed.compare, argc, argv);
  }
  if (app.got_subcommand("sheet")) {
    return sheet(typed.sheet, argc, argv);
  }
  if (app.got_subcommand("gather")) {
    return gatherSources(typed.gather);
  }
  if (app.got_subcommand("take-in")) {
    return takeFilesIn(typed.takeIn, argc, argv);
  }
  if (app.got_subcommand("derive")) {
    return deriveEntries(typed.derive);
  }
  return rewrite(typed.rewrite);
}

} // namespace

int main(int argc, char** argv) {
  CLI::App app("Turns what was recorded during a cardiac-arrest rescue or drill into answers.\n"
               "For review after the event: not a medical device, no prognosis, no diagnosis.",
               "afterbeat-cli");
  app.set_version_flag("--version", "afterbeat-cli " AFTERBEAT_VERSION);
  app.require_subcommand(1);
  Typed typed;
  addCommands(app, typed);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    const bool asked = app.exit(error) == 0; // help and version were asked for
    return static_cast<int>(asked ? Exit::fine : Exit::wrongUse);
  }
  try {
    return static_cast<int>(run(app, typed, argc, argv));
  } catch (const std::exception& error) { // a full disk under standard output, say
    tell(std::string("The output could not be written: ") + error.what());
    return static_cast<int>(Exit::readOrWriteFailed);
  }
}
