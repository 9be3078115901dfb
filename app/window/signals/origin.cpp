#include "app/window/signals/origin.h"

#include "app/window/look/look.h"

#include <QCoreApplication>
#include <QStringList>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// What of the origin a figure rests on; nothing where it rests on none.
struct Part {
  const DerivedShare* share = nullptr;
  const SignalCoverage* coverage = nullptr;
  bool breaths = false;
};

Part partOf(MeasureId id, const Figures& figures, const FigureOrigin& origin) {
  if (figures[id].status != Status::ok || !restsOnDerived(id, origin.use)) {
    return {};
  }
  const auto given = [](const std::optional<SignalCoverage>& coverage) {
    return coverage ? &*coverage : nullptr;
  };
  return id == MeasureId::ventilations || id == MeasureId::ventilationsPerMinute
             ? Part{&origin.use.ventilations, given(origin.ventilations), true}
             : Part{&origin.use.compressions, given(origin.compressions), false};
}

} // namespace

QString originWords(MeasureId id, const Figures& figures, const FigureOrigin& origin) {
  const Part part = partOf(id, figures, origin);
  if (!part.share) {
    return {};
  }
  const QString from =
      part.share->derived < part.share->of ? tr("partly from the signals") : tr("from the signals");
  return part.coverage ? tr("%1, %2 judged").arg(from, words().percent(part.coverage->share()))
                       : from;
}

QString originSentences(MeasureId id, const Figures& figures, const FigureOrigin& origin) {
  const Part part = partOf(id, figures, origin);
  if (!part.share) {
    return {};
  }
  const QString derived = words().plainNumber(static_cast<double>(part.share->derived));
  const QString all = words().plainNumber(static_cast<double>(part.share->of));
  QStringList sentences{
      (part.breaths ? tr("From the signals: %1 of %2 breaths were derived, not recorded.")
                    : tr("From the signals: %1 of %2 compressions were derived, not recorded."))
          .arg(derived, all)};
  if (part.coverage) {
    QStringList names;
    for (const std::string& name : part.coverage->channels) {
      names << QString::fromStdString(name);
    }
    sentences << tr("Channels: %1; %2 of the recording could be judged.")
                     .arg(words().list(names), words().percent(part.coverage->share()));
  }
  if (part.share->quality) {
    sentences
        << tr("Their quality is %1 of 1 in the mean.").arg(words().number(*part.share->quality, 2));
  }
  return sentences.join(QLatin1Char(' '));
}

} // namespace afterbeat::window
