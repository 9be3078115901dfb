#include "app/papers/season/without_identity.h"

#include <QMessageAuthenticationCode>

namespace afterbeat::papers {

Pseudonyms::Pseudonyms(QByteArray secret, const Words& words)
    : secret_(std::move(secret)),
      //: A pseudonym stands in the place.
      site_(words(QT_TRANSLATE_NOOP("Papers", "Site %1"))),
      team_(words(QT_TRANSLATE_NOOP("Papers", "Team %1"))),
      record_(words(QT_TRANSLATE_NOOP("Papers", "Record %1"))) {}

std::string Pseudonyms::pseudonym(const char* what, const QString& shown, const std::string& name,
                                  int letters) const {
  if (name.empty()) {
    return {};
  }
  // What it is is part of what is hashed: a team called as its site gets another pseudonym.
  const QByteArray hash =
      QMessageAuthenticationCode::hash(QByteArray(what) + '\0' + QByteArray::fromStdString(name),
                                       secret_, QCryptographicHash::Sha256);
  static constexpr char kLetters[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  QString made;
  unsigned bits = 0;
  int held = 0;
  qsizetype next = 0;
  for (int i = 0; i < letters; ++i) {
    if (held < 5) {
      bits = (bits << 8) | static_cast<unsigned char>(hash[next++]);
      held += 8;
    }
    held -= 5;
    if (i > 0 && i % 4 == 0) {
      made += QLatin1Char('-');
    }
    made += QLatin1Char(kLetters[(bits >> held) & 31U]);
  }
  return shown.arg(made).toStdString();
}

std::string Pseudonyms::site(const std::string& name) const {
  return pseudonym("site", site_, name, 8);
}

std::string Pseudonyms::team(const std::string& name) const {
  return pseudonym("team", team_, name, 8);
}

std::string Pseudonyms::record(const RecordFacts& facts) const {
  return pseudonym("record", record_, facts.id.empty() ? "file " + facts.file : "id " + facts.id,
                   12);
}

Season withoutIdentity(const Season& season, const Pseudonyms& pseudonyms) {
  Season made{season.records, season.column};
  for (RecordFacts& facts : made.records) {
    facts.file = pseudonyms.record(facts);
    facts.id.clear();
    facts.device.clear();
    facts.site = pseudonyms.site(facts.site);
    facts.team = pseudonyms.team(facts.team);
    facts.number = 0;
    facts.monthOnly = true;
    if (facts.day) {
      const std::chrono::year_month_day day(*facts.day);
      facts.day = std::chrono::sys_days(day.year() / day.month() / 1);
    }
  }
  return made;
}

std::vector<MarkedStep> withoutIdentity(std::vector<MarkedStep> steps) {
  for (MarkedStep& step : steps) {
    step.words.clear();
  }
  return steps;
}

Profile withoutIdentity(Profile profile) {
  if (builtInProfile(profile.id) == nullptr) {
    profile.id = profile.name = "own";
  }
  return profile;
}

} // namespace afterbeat::papers
