#include "app/window/finding/entry_words.h"

#include "app/papers/rows_model.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QString own(const std::string& text) {
  return papers::plainText(text);
}

/// "remark: some words", or the kind alone where nothing was said.
QString said(const QString& kind, const std::string& text) {
  return text.empty() ? kind : tr("%1: %2").arg(kind, own(text));
}

QString withEnergy(const QString& what, const std::optional<double>& joule) {
  return joule ? tr("%1, %2 J").arg(what, words().plainNumber(*joule)) : what;
}

/// Words for what an entry says; each type has one function.
struct Saying {
  Q_DECLARE_TR_FUNCTIONS(afterbeat::window::Saying)

public:
  QString operator()(const entry::Other& other) const {
    return tr("entry of a type unknown to this program: “%1”").arg(own(other.type));
  }
  QString operator()(const entry::PowerOn&) const { return tr("device on"); }
  QString operator()(const entry::PowerOff&) const { return tr("device off"); }
  QString operator()(const entry::ClockSet& clock) const {
    return said(tr("clock of the device set"), clock.wall);
  }
  QString operator()(const entry::Electrodes& electrodes) const {
    if (!electrodes.state) {
      return tr("electrodes");
    }
    switch (*electrodes.state) {
    case ElectrodeState::attached:
      return tr("electrodes attached");
    case ElectrodeState::detached:
      return tr("electrodes off");
    case ElectrodeState::poorContact:
      break;
    }
    return tr("electrodes: poor contact");
  }
  QString operator()(const entry::PatientMode& mode) const {
    return mode.category ? tr("device set to: %1").arg(patientWords(*mode.category))
                         : tr("device setting for the patient");
  }
  QString operator()(const entry::Analysis& analysis) const {
    if (!analysis.advice) {
      return tr("analysis");
    }
    switch (*analysis.advice) {
    case Advice::shock:
      return tr("analysis: shock advised");
    case Advice::noShock:
      return tr("analysis: no shock advised");
    case Advice::inconclusive:
      break;
    }
    return tr("analysis: inconclusive");
  }
  QString operator()(const entry::Charge& charge) const {
    return withEnergy(tr("charging"), charge.energyJ);
  }
  QString operator()(const entry::Shock& shock) const {
    if (!shock.delivered) {
      return tr("shock, not recorded whether given");
    }
    if (*shock.delivered) {
      return withEnergy(tr("shock given"), shock.energyJ);
    }
    return said(tr("shock not given"), shock.reason);
  }
  QString operator()(const entry::Cpr& cpr) const {
    return cpr.ratePerMin ? tr("compressions, %1 a minute").arg(words().number(*cpr.ratePerMin))
                          : tr("compressions, rate not recorded");
  }
  QString operator()(const entry::Compression& one) const {
    return one.depthMm ? tr("compression, %1 mm").arg(words().number(*one.depthMm))
                       : tr("compression");
  }
  QString operator()(const entry::Ventilation& breath) const {
    return breath.volumeMl ? tr("breath, %1 ml").arg(words().number(*breath.volumeMl))
                           : tr("breath");
  }
  QString operator()(const entry::Airway& airway) const {
    if (!airway.device) {
      return tr("airway");
    }
    switch (*airway.device) {
    case AirwayDevice::none:
      return tr("airway: no device");
    case AirwayDevice::mask:
      return tr("airway: mask");
    case AirwayDevice::supraglottic:
      return tr("airway: supraglottic device");
    case AirwayDevice::tube:
      break;
    }
    return tr("airway: tube");
  }
  QString operator()(const entry::Rhythm& rhythm) const {
    if (!rhythm.is) {
      return tr("rhythm");
    }
    switch (*rhythm.is) {
    case RhythmKind::shockable:
      return tr("rhythm: shockable");
    case RhythmKind::organised:
      return tr("rhythm: organised");
    case RhythmKind::asystole:
      return tr("rhythm: asystole");
    case RhythmKind::unclear:
      break;
    }
    return tr("rhythm: unclear");
  }
  QString operator()(const entry::Circulation& circulation) const {
    if (!circulation.state) {
      return tr("circulation");
    }
    return *circulation.state == CirculationState::returned ? tr("circulation returned")
                                                            : tr("circulation lost");
  }
  QString operator()(const entry::RescuerChange& change) const {
    return said(tr("rescuer change"), change.text);
  }
  QString operator()(const entry::Medication& given) const {
    return said(tr("medication"), given.text);
  }
  QString operator()(const entry::Milestone& milestone) const {
    return milestone.what.empty() ? tr("milestone")
                                  : papers::milestoneWords(milestone.what, words());
  }
  QString operator()(const entry::Excluded& excluded) const {
    if (!excluded.why) {
      return tr("not counted");
    }
    switch (*excluded.why) {
    case ExclusionReason::notRescue:
      return tr("not counted: not part of the rescue");
    case ExclusionReason::notTrusted:
      return tr("not counted: recording not trusted");
    case ExclusionReason::notObserved:
      break;
    }
    return tr("not counted: nobody was watching");
  }
  QString operator()(const entry::Prompt& prompt) const {
    return said(tr("prompt of the device"), prompt.text.empty() ? prompt.code : prompt.text);
  }
  QString operator()(const entry::Battery& battery) const {
    if (battery.percent) {
      return tr("battery: %1 %").arg(words().number(*battery.percent));
    }
    if (battery.bars && battery.barsFull) {
      return tr("battery: %1 of %2 bars")
          .arg(words().number(*battery.bars), words().number(*battery.barsFull));
    }
    return battery.bars ? tr("battery: bars %1").arg(words().number(*battery.bars)) : tr("battery");
  }
  QString operator()(const entry::Pads& pads) const {
    return pads.expires.empty() ? tr("electrode pads")
                                : tr("electrode pads, expire %1").arg(own(pads.expires));
  }
  QString operator()(const entry::SelfTest& test) const {
    const QString what = !test.passed   ? tr("self-test")
                         : *test.passed ? tr("self-test passed")
                                        : tr("self-test failed");
    return said(what, test.detail);
  }
  QString operator()(const entry::Fault& fault) const {
    return said(tr("device fault"), fault.text.empty() ? fault.code : fault.text);
  }
  QString operator()(const entry::Mark& mark) const {
    const QString what = said(tr("remark"), mark.text);
    return mark.author.empty() ? what : tr("%1 (%2)").arg(what, own(mark.author));
  }
  QString operator()(const entry::LostSamples& samples) const {
    return tr("samples that could not be used, channel “%1”").arg(own(samples.channel));
  }
  QString operator()(const entry::Unreadable&) const { return tr("a line that could not be read"); }
};

} // namespace

QString entryWords(const Entry& entry) {
  QString text = std::visit(Saying{}, entry.data);
  if (!entry.note.empty()) {
    text = tr("%1 – %2").arg(text, own(entry.note));
  }
  if (entry.incomplete) {
    text = tr("%1 (incomplete, counts in no figure)").arg(text);
  }
  return text;
}

QString entryKindWords(const EntryData& data) {
  static constexpr const char* kKinds[] = {
      QT_TRANSLATE_NOOP("afterbeat::window", "unknown type"),
      QT_TRANSLATE_NOOP("afterbeat::window", "device on, power"),
      QT_TRANSLATE_NOOP("afterbeat::window", "device off, power"),
      QT_TRANSLATE_NOOP("afterbeat::window", "clock"),
      QT_TRANSLATE_NOOP("afterbeat::window", "electrodes"),
      QT_TRANSLATE_NOOP("afterbeat::window", "patient setting"),
      QT_TRANSLATE_NOOP("afterbeat::window", "analysis"),
      QT_TRANSLATE_NOOP("afterbeat::window", "charge"),
      QT_TRANSLATE_NOOP("afterbeat::window", "shock"),
      QT_TRANSLATE_NOOP("afterbeat::window", "compressions, hands on"),
      QT_TRANSLATE_NOOP("afterbeat::window", "compressions, hands on"),
      QT_TRANSLATE_NOOP("afterbeat::window", "breath, ventilation"),
      QT_TRANSLATE_NOOP("afterbeat::window", "airway"),
      QT_TRANSLATE_NOOP("afterbeat::window", "rhythm"),
      QT_TRANSLATE_NOOP("afterbeat::window", "circulation"),
      QT_TRANSLATE_NOOP("afterbeat::window", "rescuer change"),
      QT_TRANSLATE_NOOP("afterbeat::window", "medication"),
      QT_TRANSLATE_NOOP("afterbeat::window", "milestone"),
      QT_TRANSLATE_NOOP("afterbeat::window", "not counted, excluded"),
      QT_TRANSLATE_NOOP("afterbeat::window", "prompt"),
      QT_TRANSLATE_NOOP("afterbeat::window", "battery"),
      QT_TRANSLATE_NOOP("afterbeat::window", "electrode pads"),
      QT_TRANSLATE_NOOP("afterbeat::window", "self-test"),
      QT_TRANSLATE_NOOP("afterbeat::window", "fault"),
      QT_TRANSLATE_NOOP("afterbeat::window", "remark"),
      QT_TRANSLATE_NOOP("afterbeat::window", "samples"),
      QT_TRANSLATE_NOOP("afterbeat::window", "unreadable line")};
  static_assert(std::size(kKinds) == std::variant_size_v<EntryData>);
  return tr(kKinds[data.index()]);
}

QString sourceWords(Source source) {
  switch (source) {
  case Source::device:
    return tr("device");
  case Source::observer:
    return tr("observer");
  case Source::derived:
    break;
  }
  return tr("derived from waves");
}

} // namespace afterbeat::window
