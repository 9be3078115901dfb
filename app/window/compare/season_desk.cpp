#include "app/window/compare/season_desk.h"

#include "app/window/compare/archive_words.h"
#include "app/window/look/figure_words.h"
#include "app/window/session/session.h"
#include "core/compare/kinds.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// What was not computed is counted by itself.
bool hasValue(const Season& season, std::uint32_t place, const Order& order) {
  if (const auto* id = std::get_if<MeasureId>(&order.by)) {
    return season.column(*id)[place].ok() || !season.records[place].hasFigures;
  }
  const RecordFacts& facts = season.records[place];
  switch (std::get<Fact>(order.by)) {
  case Fact::day:
    return facts.day.has_value();
  case Fact::site:
    return !facts.site.empty();
  case Fact::team:
    return !facts.team.empty();
  case Fact::device:
    return !facts.device.empty();
  case Fact::id:
    return !facts.id.empty();
  case Fact::kind:
    return facts.kind.has_value();
  case Fact::hadShock:
    return facts.hadShock || !facts.hasFigures;
  case Fact::longestPauseCause:
    return facts.longestPauseCause || !facts.hasFigures;
  case Fact::file:
  case Fact::evidence:
  case Fact::version:
    return true;
  }
  return true;
}

Arranged arrangeNow(const SharedSource& source, const Filter& filter, const Order& order,
                    const FilterWords& words) {
  Arranged all;
  all.source = source;
  const Season& season = source->season();
  try {
    for (const MeasureId id : SeasonDesk::usualColumns()) {
      all.columns[id] = &season.column(id);
    }
    if (const auto* id = std::get_if<MeasureId>(&order.by)) {
      all.columns[*id] = &season.column(*id);
    }
    all.chosen = matching(season, filter, words);
    sortBy(season, all.chosen, order);
    all.withoutFigures = withoutFigures(season, all.chosen);
    all.withoutValue = static_cast<std::size_t>(
        std::count_if(all.chosen.begin(), all.chosen.end(),
                      [&](std::uint32_t place) { return !hasValue(season, place, order); }));
  } catch (const archive::ArchiveFailure& failure) {
    // The archive is gone: nothing is shown rather than half of it.
    all.trouble = archiveWords(failure.error);
    all.columns.clear();
    all.chosen.clear();
  }
  return all;
}

} // namespace

QString causeName(PauseCause cause) {
  switch (cause) {
  case PauseCause::shock:
    return SeasonDesk::tr("around a shock");
  case PauseCause::analysis:
    return SeasonDesk::tr("for an analysis");
  case PauseCause::beforeFirst:
    return SeasonDesk::tr("before the first compressions");
  case PauseCause::afterLast:
    return SeasonDesk::tr("after the last compressions");
  case PauseCause::breaths:
    return SeasonDesk::tr("for breaths");
  case PauseCause::breathsLong:
    return SeasonDesk::tr("for breaths, long");
  case PauseCause::noReasonRecorded:
    return SeasonDesk::tr("no reason recorded");
  }
  return {};
}

SeasonDesk::SeasonDesk(Session& session, QObject* parent)
    : QObject(parent), session_(session), reading_(*this), readingLatest_(*this),
      arranging_(*this) {
  connect(&session_, &Session::settingsChanged, this, [this] {
    if (place_) {
      openArchive(*place_);
    } else if (!files_.isEmpty()) {
      openFiles(files_);
    }
  });
}

SeasonDesk::~SeasonDesk() {
  if (watch_) {
    watch_->cancelled = true;
  }
}

const std::vector<MeasureId>& SeasonDesk::usualColumns() {
  // Length and shocks stand beside the hands-off share, which says little alone.
  static const std::vector<MeasureId> usual{
      MeasureId::timeOn,           MeasureId::shocksDelivered, MeasureId::powerOnToFirstShock,
      MeasureId::handsOffFraction, MeasureId::longestPause,
  };
  return usual;
}

FilterWords SeasonDesk::filterWords() {
  FilterWords words;
  const std::array<std::optional<RecordKind>, 4> kinds{RecordKind::rescue, RecordKind::drill,
                                                       RecordKind::test, std::nullopt};
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    words.kinds[i] = kindWords(kinds[i]).toStdString();
  }
  for (std::size_t i = 0; i + 1 < words.causes.size(); ++i) {
    words.causes[i] = causeName(static_cast<PauseCause>(i)).toStdString();
  }
  words.withShock = tr("with a shock").toStdString();
  words.withoutShock = tr("without a shock").toStdString();
  return words;
}

void SeasonDesk::openFiles(const QStringList& sources) {
  files_ = sources;
  start([sources, settings = session_.settings()](SeasonWatch& watch) {
    return Read{readFiles(sources, settings, watch), std::nullopt, std::nullopt};
  });
}

void SeasonDesk::openArchive(archive::ArchivePlace place) { // may be that of `place_`
  start([place, settings = session_.settings(), read = archives_.all](SeasonWatch&) {
    return Read{read(place, settings), place, std::nullopt};
  });
  // Of the season that is open all records stay in view until they are there anew.
  if (order_ == latestFirst() && !(source_ && place_ == place)) {
    readLatestOf(place);
  }
}

void SeasonDesk::readLatestOf(const archive::ArchivePlace& place) {
  readingLatest_.ask(
      [place, settings = session_.settings(), read = archives_.latest, words = filterWords()] {
        const auto latest = read(place, settings);
        if (!latest) {
          return Arranged();
        }
        Arranged all = arrangeNow(latest->source, {}, latestFirst(), words);
        all.latestOf = latest->all;
        return all;
      },
      [this, place](Arranged latest) {
        // What cannot be read the reading of all of it will say.
        if (latest.source && latest.trouble.isEmpty()) {
          showLatest(place, std::move(latest));
        }
      });
}

void SeasonDesk::showLatest(const archive::ArchivePlace& place, Arranged latest) {
  source_.reset();
  arranged_ = {};
  arranging_.forget();
  filter_ = {};
  files_.clear();
  report_.reset();
  place_ = place;
  latest_ = std::move(latest);
  emit sourceChanged();
  emit arrangedChanged();
}

void SeasonDesk::dropLatest() {
  if (!onlyLatest()) {
    return;
  }
  latest_ = {};
  source_.reset();
  arranging_.forget();
  place_.reset();
  emit sourceChanged();
}

void SeasonDesk::takeIn(const archive::ArchivePlace& place, const QStringList& sources) {
  start([place, sources, settings = session_.settings()](SeasonWatch& watch) {
    auto report = takeIntoArchive(place, sources, watch);
    if (!report) {
      return Read{tl::unexpected(report.error()), place, std::nullopt};
    }
    // What was taken in before it was stopped is there.
    return Read{readArchive(place, settings), place, std::move(*report)};
  });
}

void SeasonDesk::start(std::function<Read(SeasonWatch&)> work) {
  if (watch_) {
    watch_->cancelled = true;
  }
  readingLatest_.forget();
  dropLatest();
  watch_ = std::make_shared<SeasonWatch>();
  reading_.ask([work = std::move(work), watch = watch_] { return work(*watch); },
               [this](Read read) { finish(std::move(read)); });
  emit busyChanged();
}

void SeasonDesk::show(SharedSource source) {
  dropLatest();
  finish({std::move(source), std::nullopt, std::nullopt});
}

void SeasonDesk::stop() {
  if (!watch_) {
    return;
  }
  // What was read so far, or taken in, is shown: it is whole up to a file.
  watch_->cancelled = true;
}

void SeasonDesk::finish(Read read) {
  watch_.reset();
  readingLatest_.forget();
  if (!read.source) {
    dropLatest();
    emit busyChanged();
    emit failed(read.source.error());
    return;
  }
  // What was asked for since the latest records are in view is kept.
  const bool other = !onlyLatest() && (!source_ || source_->key() != (*read.source)->key());
  source_ = *read.source;
  place_ = read.place;
  if (place_) {
    files_.clear();
  }
  report_ = std::move(read.report);
  arranged_ = {};
  if (other) {
    filter_ = {};
  }
  emit sourceChanged();
  emit busyChanged();
  if (report_) {
    emit takenIn();
  }
  arrange();
}

void SeasonDesk::setFilter(const Filter& filter) {
  filter_ = filter;
  emit wishChanged();
  arrange();
}

void SeasonDesk::setOrder(const Order& order) {
  order_ = order;
  emit wishChanged();
  arrange();
}

void SeasonDesk::arrange() {
  if (!source_) {
    return;
  }
  arranging_.ask([source = source_, filter = filter_, order = order_,
                  words = filterWords()] { return arrangeNow(source, filter, order, words); },
                 [this](Arranged arranged) {
                   arranged_ = std::move(arranged);
                   latest_ = {};
                   emit arrangedChanged();
                 });
}

} // namespace afterbeat::window
