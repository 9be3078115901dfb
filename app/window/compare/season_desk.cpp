#include "app/window/compare/season_desk.h"

#include "app/window/look/figure_words.h"
#include "app/window/session/session.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::window {

namespace {

bool hasValue(const Season& season, std::uint32_t place, const Order& order) {
  if (const auto* id = std::get_if<MeasureId>(&order.by)) {
    return season.column(*id)[place].ok();
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
    return facts.hadShock.has_value();
  case Fact::longestPauseCause:
    return facts.longestPauseCause.has_value();
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
    all.withoutValue = static_cast<std::size_t>(
        std::count_if(all.chosen.begin(), all.chosen.end(),
                      [&](std::uint32_t place) { return !hasValue(season, place, order); }));
  } catch (const archive::ArchiveFailure& failure) {
    // The archive is gone: nothing is shown rather than half of it.
    all.trouble = QString::fromUtf8(failure.what());
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
    : QObject(parent), session_(session), reading_(*this), arranging_(*this) {
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
  return words;
}

void SeasonDesk::openFiles(const QStringList& sources) {
  files_ = sources;
  start([sources, settings = session_.settings()](SeasonWatch& watch) {
    return Read{readFiles(sources, settings, watch), std::nullopt, std::nullopt};
  });
}

void SeasonDesk::openArchive(const archive::ArchivePlace& place) {
  start([place, settings = session_.settings()](SeasonWatch&) {
    return Read{readArchive(place, settings), place, std::nullopt};
  });
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
  watch_ = std::make_shared<SeasonWatch>();
  reading_.ask([work = std::move(work), watch = watch_] { return work(*watch); },
               [this](Read read) { finish(std::move(read)); });
  emit busyChanged();
}

void SeasonDesk::show(SharedSource source) {
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
  if (!read.source) {
    emit busyChanged();
    emit failed(read.source.error());
    return;
  }
  const bool other = !source_ || source_->key() != (*read.source)->key();
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
  arrange();
}

void SeasonDesk::setOrder(const Order& order) {
  order_ = order;
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
                   emit arrangedChanged();
                 });
}

} // namespace afterbeat::window
