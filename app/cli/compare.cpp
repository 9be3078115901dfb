#include "app/archive/files_season.h"
#include "app/archive/marked_steps.h"
#include "app/archive/pseudonym_secret.h"
#include "app/archive/recordings_in.h"
#include "app/cli/commands.h"
#include "app/cli/derived.h"
#include "app/cli/season_json.h"
#include "app/cli/season_text.h"
#include "app/papers/charts/chart_files.h"
#include "app/papers/handover_sheet.h"
#include "app/papers/season/report_page.h"
#include "app/papers/season/report_pdf.h"
#include "app/papers/season/season_csv.h"
#include "app/papers/season/season_pictures.h"
#include "app/papers/season/without_identity.h"
#include "core/bytes/byte_source.h"
#include "core/compare/filter.h"

#include <QFontDatabase>
#include <QGuiApplication>

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

namespace afterbeat::cli {
namespace {

namespace files = std::filesystem;

/// "2026-04-01=new training from here".
tl::expected<MarkedStep, std::string> stepFrom(const std::string& text) {
  int year = 0;
  unsigned month = 0, day = 0;
  char after = 0;
  const auto equals = text.find('=');
  const std::string date = text.substr(0, equals);
  const bool read = date.size() == 10 &&
                    std::sscanf(date.c_str(), "%4d-%2u-%2u%c", &year, &month, &day, &after) == 3;
  const std::chrono::year_month_day ymd{std::chrono::year(year), std::chrono::month(month),
                                        std::chrono::day(day)};
  if (!read || !ymd.ok()) {
    return tl::unexpected(
        fmt::format("“{}” is no marked day; write it as 2026-04-01=WORDS.", text));
  }
  return MarkedStep{ymd, equals == std::string::npos ? "" : text.substr(equals + 1)};
}

/// Writes as a whole or not at all.
Exit writeFile(const std::string& path, const QByteArray& bytes) {
  if (bytes.isEmpty()) {
    tell(fmt::format("{}: It could not be painted.", path));
    return Exit::readOrWriteFailed;
  }
  const auto written = replaceFile(path, [&](const ByteSink& sink) {
    return sink({bytes.constData(), static_cast<std::size_t>(bytes.size())});
  });
  if (!written) {
    tell(fmt::format("{}: It could not be written: {}.", path, written.error().what));
    return Exit::readOrWriteFailed;
  }
  return Exit::fine;
}

/// The secret of a file, which is made where there is none.
tl::expected<QByteArray, std::string> secretFrom(const std::string& path) {
  if (path.empty()) {
    tell("Without --secret the pseudonyms hold for this run alone.");
  }
  std::error_code error;
  if (path.empty() || !files::exists(path, error)) {
    const QByteArray made = QByteArray::fromStdString(archive::newSecret());
    if (!path.empty()) {
      if (writeFile(path, made) != Exit::fine) {
        return tl::unexpected(std::string("The secret could not be kept."));
      }
      files::permissions(path, files::perms::owner_read | files::perms::owner_write, error);
    }
    return made;
  }
  auto source = openFile(path);
  const auto text = source ? readAll(**source, 4096) : tl::unexpected(source.error());
  if (!text) {
    return tl::unexpected(fmt::format("The secret cannot be read: {}.", text.error().what));
  }
  if (static_cast<qsizetype>(text->size()) < papers::Pseudonyms::kLeastSecret) {
    return tl::unexpected(
        fmt::format("The secret has fewer than {} bytes.", papers::Pseudonyms::kLeastSecret));
  }
  return QByteArray::fromStdString(*text);
}

/// A word as a shell reads it back.
std::string forShell(const std::string& word) {
  static constexpr const char* kPlain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
                                        "0123456789_-./:+,=@%";
  if (!word.empty() && word.find_first_not_of(kPlain) == std::string::npos) {
    return word;
  }
  std::string quoted = "'";
  for (const char c : forTerminal(word)) {
    quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
  }
  return quoted + '\'';
}

/// What `take-in` must be given to compute the figures that were asked for. A profile is always
/// named: without any of these options it computes what the archive already has in use.
std::string optionsOf(const CompareOptions& options) {
  const SettingWords usual;
  const SettingWords& typed = options.settings;
  const std::string profile = typed.profile.empty() ? FigureSettings{}.profile.id
                              : options.withoutIdentity && builtInProfile(typed.profile) == nullptr
                                  ? "FILE"
                                  : typed.profile;
  std::string text = " --profile " + forShell(profile);
  if (typed.pauseThreshold != usual.pauseThreshold) {
    text += fmt::format(" --pause-threshold {}", typed.pauseThreshold);
  }
  if (typed.windowEnd != usual.windowEnd) {
    text += " --window-end " + typed.windowEnd;
  }
  if (options.derive != CompareOptions{}.derive) {
    text += " --derive " + options.derive;
  }
  return text;
}

/// One run of the command.
class Comparison {
public:
  Comparison(const CompareOptions& options, FigureSettings settings)
      : options_(options), settings_(std::move(settings)) {}

  Exit run() {
    if (!readSteps() || !outputsAreFree()) {
      return Exit::wrongUse;
    }
    if (!readSeason()) {
      return Exit::readOrWriteFailed;
    }
    // By what the records say themselves, before it is taken away.
    Filter filter;
    filter.words = options_.only;
    const Chosen chosen = matching(season_, filter);
    tellIfEmpty(chosen);
    if (options_.withoutIdentity) {
      report_.steps = papers::withoutIdentity(std::move(report_.steps));
      const auto found = secret();
      if (!found) {
        tell(found.error());
        return Exit::readOrWriteFailed;
      }
      settings_.profile = papers::withoutIdentity(std::move(settings_.profile));
      // What programs read is the same in every language.
      const QString language = QString::fromStdString(
          options_.csv || options_.json ? std::string("en") : options_.language);
      season_ = papers::withoutIdentity(
          season_, papers::Pseudonyms(*found, papers::Words::inLanguage(language)));
    }
    return write(chosen);
  }

private:
  bool readSteps() {
    for (const std::string& text : options_.steps) {
      auto step = stepFrom(text);
      if (!step) {
        tell(step.error());
        return false;
      }
      report_.steps.push_back(*step);
    }
    std::sort(report_.steps.begin(), report_.steps.end(),
              [](const MarkedStep& a, const MarkedStep& b) { return a.day < b.day; });
    return true;
  }

  /// Those that users of the archive share, where the command names none.
  bool takeSharedSteps(const archive::Archive& archive) {
    if (!report_.steps.empty()) {
      return true;
    }
    auto shared = archive::sharedSteps(archive);
    if (!shared) {
      tell(shared.error().sentence);
      return false;
    }
    report_.steps = std::move(*shared);
    return true;
  }

  bool outputsAreFree() const {
    std::vector<files::path> inputs{options_.settings.profile, options_.archive};
    if (!options_.files.empty()) {
      const auto found = archive::recordingsIn({options_.files.begin(), options_.files.end()});
      inputs.insert(inputs.end(), found.paths.begin(), found.paths.end());
      inputs.insert(inputs.end(), options_.files.begin(), options_.files.end());
    }
    // A secret is made where there is none, and read where there is one.
    for (const std::string& output : {options_.secret, options_.report, options_.page}) {
      for (const files::path& input : inputs) {
        if (isSame(output, input)) {
          tell(fmt::format("{}: This is read, and would be overwritten; choose another name.",
                           output));
          return false;
        }
      }
    }
    if (isSame(options_.report, options_.page) || isSame(options_.report, options_.secret) ||
        isSame(options_.page, options_.secret)) {
      tell("The report, the page and the secret need names of their own.");
      return false;
    }
    return true;
  }

  /// Through links and "./" as well; also of two files that are still to be made.
  static bool isSame(const files::path& one, const files::path& other) {
    std::error_code error;
    return !one.empty() && !other.empty() &&
           (files::equivalent(one, other, error) ||
            files::weakly_canonical(files::absolute(one, error), error) ==
                files::weakly_canonical(files::absolute(other, error), error));
  }

  bool readSeason() {
    const archive::MakingSettings making{settings_, deriveModeFrom(options_.derive)};
    return options_.archive.empty() ? readFiles(making) : readArchive(making);
  }

  /// With identities taken away no message may name a file or quote a record.
  bool readFiles(const archive::MakingSettings& making) {
    archive::FilesSeason made =
        archive::seasonOfFiles({options_.files.begin(), options_.files.end()}, making);
    if (options_.withoutIdentity) {
      tellCount("Sources that could not be read", made.refused.size());
      tellCount("Files with faults", made.damaged.size());
      tellCount("Files that are there twice and count once", made.twice.size());
      tellCount("Files with an older version of a record, left out", made.older.size());
    } else {
      for (const archive::RefusedFile& file : made.refused) {
        tell(fmt::format("{}: {}", file.path.string(), file.sentence));
      }
      for (const files::path& path : made.damaged) {
        tell(fmt::format("{}: has faults; `check` says which.", path.string()));
      }
      for (const files::path& path : made.twice) {
        tell(fmt::format("{}: the same bytes as another file; counted once.", path.string()));
      }
      for (const files::path& path : made.older) {
        tell(fmt::format("{}: an older version of a record that is in another file too; left out.",
                         path.string()));
      }
    }
    if (!made.damaged.empty()) {
      exit_ = Exit::problemsInData;
    }
    if (!made.refused.empty()) {
      exit_ = Exit::readOrWriteFailed;
    }
    report_.notRead = made.refused.size();
    season_ = std::move(made.season);
    return true;
  }

  static void tellCount(const char* what, std::size_t count) {
    if (count > 0) {
      tell(fmt::format("{}: {}.", what, count));
    }
  }

  bool readArchive(const archive::MakingSettings& settings) {
    const auto place = archive::ArchivePlace::from(options_.archive);
    const auto opened = place ? archive::Archive::open(*place) : tl::unexpected(place.error());
    const auto making = opened ? opened->makingWith(settings) : tl::unexpected(opened.error());
    if (making && !*making) {
      tell(fmt::format("The archive holds no figures with these settings. Compute them first: "
                       "afterbeat-cli take-in --archive {}{}",
                       options_.withoutIdentity ? "ARCHIVE" : forShell(options_.archive),
                       optionsOf(options_)));
      return false;
    }
    auto season = making ? opened->season((*making)->id) : tl::unexpected(making.error());
    const auto refused = season ? opened->refused() : tl::unexpected(season.error());
    if (!refused) {
      tell(refused.error().sentence);
      return false;
    }
    tellCount("Files that the archive could not take in, and that are in no figure",
              refused->size());
    report_.notRead = refused->size();
    settings_ = (*making)->settings.figures;
    season_ = std::move(*season);
    archive_.emplace(*opened);
    return takeSharedSteps(*opened);
  }

  /// The secret of `--secret`, or else the archive's own, made with the first use.
  tl::expected<QByteArray, std::string> secret() const {
    if (!archive_ || !options_.secret.empty()) {
      return secretFrom(options_.secret);
    }
    return archive::pseudonymSecret(*archive_)
        .map(&QByteArray::fromStdString)
        .map_error([](const archive::ArchiveError& error) {
          return error.sentence + " The archive has no secret for pseudonyms yet; use --secret.";
        });
  }

  /// An empty choice is no failure, but it is said.
  void tellIfEmpty(const Chosen& chosen) const {
    if (!chosen.empty()) {
      return;
    }
    if (!season_.records.empty()) {
      tell(fmt::format("None of {} records holds all the words of --only; nothing is compared. The "
                       "words are looked for in site, team, device, file, id, day, kind and cause "
                       "of the longest pause.",
                       season_.records.size()));
    } else if (options_.archive.empty()) {
      tell("No recording that can be read was found in what you named; nothing is compared.");
    } else {
      tell("The archive holds no recordings yet; take some in with `take-in`. Nothing is "
           "compared.");
    }
  }

  Exit write(const Chosen& chosen) {
    report_.language = QString::fromStdString(options_.language);
    report_.figures = settings_;
    report_.withoutIdentity = options_.withoutIdentity;
    writeStreams(chosen);
    const bool painted =
        !options_.report.empty() || !options_.page.empty() || !options_.pictures.empty();
    if (painted && !QFontDatabase::hasFamily(QString::fromLatin1(papers::kPaperFont))) {
      tell("The font “Inter” is not installed (Debian package fonts-inter). Nothing was painted.");
      return Exit::readOrWriteFailed;
    }
    if (!options_.report.empty() || !options_.page.empty()) {
      const papers::SeasonReport report = papers::makeSeasonReport(season_, chosen, report_);
      if (!options_.report.empty()) {
        exit_ = worse(
            exit_, writeFile(options_.report, papers::reportAsPdf(report, options_.paper == "Letter"
                                                                              ? QPageSize::Letter
                                                                              : QPageSize::A4)));
      }
      if (!options_.page.empty()) {
        exit_ = worse(exit_, writeFile(options_.page, papers::reportAsPage(report)));
      }
    }
    if (!options_.pictures.empty()) {
      writePictures(chosen);
    }
    return worse(exit_, flushOutput());
  }

  void writeStreams(const Chosen& chosen) const {
    if (options_.csv) {
      papers::writeCsv(season_, chosen, [](const std::string& line) { fmt::print("{}", line); });
    } else if (options_.json) {
      fmt::print("{}\n", seasonJson(season_, chosen, report_).dump());
    } else if (options_.report.empty() && options_.page.empty() && options_.pictures.empty()) {
      fmt::print("{}", seasonText(season_, chosen, report_));
    }
  }

  void writePictures(const Chosen& chosen) {
    std::error_code error;
    files::create_directories(options_.pictures, error);
    const auto look = papers::ChartLook::screenLight();
    for (const auto& picture : papers::seasonPictures(season_, chosen, report_)) {
      const std::string path =
          (files::path(options_.pictures) / picture.name.toStdString()).string();
      const Exit written =
          worse(writeFile(path + ".svg", papers::chartAsSvg(picture.chart, 900, look)),
                writeFile(path + ".png", papers::chartAsPng(picture.chart, 900, look, 2)));
      exit_ = worse(exit_, written);
      if (written != Exit::fine) {
        return; // the next would fail alike
      }
    }
  }

  const CompareOptions& options_;
  FigureSettings settings_;
  papers::ReportSettings report_;
  Season season_;
  std::optional<archive::Archive> archive_;
  Exit exit_ = Exit::fine;
};

} // namespace

Exit compare(const CompareOptions& options, int& argc, char** argv) {
  Exit failure = Exit::fine;
  auto settings = settingsFrom(options.settings, failure);
  if (!settings) {
    tell(settings.error());
    return failure;
  }
  if (options.archive.empty() == options.files.empty()) {
    tell("Name files to compare, or an archive with --archive, and not both.");
    return Exit::wrongUse;
  }
  qputenv("QT_QPA_PLATFORM", "offscreen");
  // Remarks of the toolkit about its surroundings are no words for the user.
  qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  const QGuiApplication application(argc, argv);
  try {
    return Comparison(options, std::move(*settings)).run();
  } catch (const archive::ArchiveFailure& failed) {
    tell(failed.what());
    return Exit::readOrWriteFailed;
  }
}

} // namespace afterbeat::cli
