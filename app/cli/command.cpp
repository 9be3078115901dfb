#include "app/cli/command.h"

#include "core/resuslog/write_log.h"
#include "importers/gather/gather.h"

#include <algorithm>
#include <cstdio>

#include <fmt/format.h>
#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

namespace afterbeat::cli {
namespace {

/// Sources that are no event log by their name; everything else is tried as a log first.
bool namedAsOtherSource(const std::filesystem::path& path) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  static const std::vector<std::string> kOther{".hea", ".dat", ".atr", ".csv", ".tsv", ".txt"};
  return std::find(kOther.begin(), kOther.end(), ending) != kOther.end();
}

/// A profile's name must fit into a line of the sheet.
constexpr std::size_t kLongestName = 80;

tl::expected<Opened, std::string> import(const std::string& file) {
  auto imported = readAnySource(file);
  if (!imported) {
    return tl::unexpected(imported.error().sentence());
  }
  return Opened{file, std::move(imported->record), std::move(imported->problems), {}};
}

} // namespace

tl::expected<Opened, std::string> open(const std::string& file, bool keepSamples) {
  if (namedAsOtherSource(file)) {
    return import(file);
  }
  ReadOptions options;
  options.keepSamples = keepSamples;
  auto log = readLogFile(file, options);
  if (!log) {
    return tl::unexpected(sentence(log.error()));
  }
  return Opened{file, std::move(log->records.front().record), std::move(log->problems),
                std::move(log->sha256)};
}

std::string problemLine(const std::string& file, const Problem& problem) {
  return forTerminal(fmt::format("{}:{}: {}: {}", file, problem.line,
                                 severityName(problem.severity), sentence(problem)));
}

Exit tellProblems(const std::string& file, const std::vector<Problem>& problems, Severity least) {
  Exit exit = Exit::fine;
  for (const Problem& problem : problems) {
    if (problem.severity >= least) {
      fmt::print(stderr, "{}\n", problemLine(file, problem));
    }
    if (problem.severity == Severity::error) {
      exit = Exit::problemsInData;
    }
  }
  return exit;
}

/// Marks that turn the direction of what follows: U+200E, U+200F, U+202A to U+202E, U+2066 to
/// U+2069.
static bool turnsText(std::string_view three) {
  if (three.size() < 3 || three[0] != '\xE2') {
    return false;
  }
  const auto second = static_cast<unsigned char>(three[1]);
  const auto third = static_cast<unsigned char>(three[2]);
  return (second == 0x80 && (third == 0x8E || third == 0x8F || (third >= 0xAA && third <= 0xAE))) ||
         (second == 0x81 && third >= 0xA6 && third <= 0xA9);
}

std::string forTerminal(std::string_view text) {
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto c = static_cast<unsigned char>(text[i]);
    const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0U;
    if (c < 0x20 || c == 0x7F) {
      plain += ' ';
    } else if (turnsText(text.substr(i, 3))) {
      plain += ' ';
      i += 2;
    } else if (c == 0xC2 && next >= 0x80 && next < 0xA0) { // C1 controls
      plain += ' ';
      ++i;
    } else {
      plain += text[i];
    }
  }
  return plain;
}

std::string moment(const Record& record, Time t) {
  const auto wall = wallTimeAt(record, t);
  return wall ? formatClock(*wall) : fmt::format("{:.1f} s", seconds(t));
}

void tell(const std::string& line) {
  static const auto logger = [] {
    auto made = spdlog::stderr_logger_st("afterbeat-cli");
    made->set_pattern("%n: %v");
    return made;
  }();
  logger->info("{}", forTerminal(line));
}

Exit flushOutput() {
  if (std::fflush(stdout) != 0 || std::ferror(stdout) != 0) {
    tell("The output could not be written.");
    return Exit::readOrWriteFailed;
  }
  return Exit::fine;
}

bool sameFile(const std::filesystem::path& output, const std::filesystem::path& source) {
  std::error_code error;
  return std::filesystem::equivalent(output, source, error) && !error;
}

tl::expected<FigureSettings, std::string> settingsFrom(const SettingWords& words, Exit& failure) {
  failure = Exit::wrongUse;
  FigureSettings settings;
  if (!(words.pauseThreshold >= 0.5 && words.pauseThreshold <= 5.0)) {
    return tl::unexpected(std::string("The pause threshold must lie between 0.5 and 5 seconds."));
  }
  settings.pauseThreshold = *durationFromSeconds(words.pauseThreshold);
  if (words.windowEnd == name(WindowEnd::recordEnd)) {
    settings.windowEnd = WindowEnd::recordEnd;
  } else if (words.windowEnd != name(WindowEnd::lastActivity)) {
    return tl::unexpected(std::string("The window ends at last_activity or at record_end."));
  }
  if (words.profile.empty()) {
    return settings;
  }
  if (const Profile* known = builtInProfile(words.profile)) {
    settings.profile = *known;
    return settings;
  }
  auto source = openFile(words.profile);
  if (!source) {
    if (!std::filesystem::exists(words.profile)) {
      std::string ids;
      for (const Profile& profile : builtInProfiles()) {
        ids += (ids.empty() ? "" : ", ") + profile.id;
      }
      return tl::unexpected(fmt::format(
          "There is no profile “{}” and no file of that name. Profiles that come with the program: "
          "{}.",
          words.profile, ids));
    }
    failure = Exit::readOrWriteFailed;
    return tl::unexpected(
        fmt::format("The profile {} cannot be read: {}.", words.profile, source.error().what));
  }
  failure = Exit::readOrWriteFailed;
  const auto text = readAll(**source, 1 << 20);
  if (!text) {
    return tl::unexpected(
        fmt::format("The profile {} cannot be read: {}.", words.profile, text.error().what));
  }
  auto profile = parseProfile(*text);
  if (!profile) {
    return tl::unexpected(
        fmt::format("The profile {} is not usable: {}", words.profile, sentence(profile.error())));
  }
  if (builtInProfile(profile->id) != nullptr) {
    return tl::unexpected(fmt::format(
        "The profile {} has the id “{}”, which belongs to one that comes with the program; give it "
        "an id of its own.",
        words.profile, profile->id));
  }
  if (profile->name.size() > kLongestName) {
    return tl::unexpected(fmt::format("The profile {} has a name longer than {} characters.",
                                      words.profile, kLongestName));
  }
  settings.profile = std::move(*profile);
  return settings;
}

} // namespace afterbeat::cli
