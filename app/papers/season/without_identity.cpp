#include "app/papers/season/without_identity.h"

#include <QMessageAuthenticationCode>

namespace afterbeat::papers {

std::string Pseudonyms::pseudonym(const char* word, const std::string& name, int letters) const {
  if (name.empty()) {
    return {};
  }
  // The word is part of what is hashed: a team called as its site gets another pseudonym.
  const QByteArray hash =
      QMessageAuthenticationCode::hash(QByteArray(word) + '\0' + QByteArray::fromStdString(name),
                                       secret_, QCryptographicHash::Sha256);
  static constexpr char kLetters[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  std::string made = std::string(word) + ' ';
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
      made += '-';
    }
    made += kLetters[(bits >> held) & 31U];
  }
  return made;
}

std::string Pseudonyms::site(const std::string& name) const {
  return pseudonym("Site", name, 8);
}

std::string Pseudonyms::team(const std::string& name) const {
  return pseudonym("Team", name, 8);
}

std::string Pseudonyms::record(const RecordFacts& facts) const {
  return pseudonym("Record", facts.id.empty() ? "file " + facts.file : "id " + facts.id, 12);
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
    if (facts.day) {
      const std::chrono::year_month_day day(*facts.day);
      facts.day = std::chrono::sys_days(day.year() / day.month() / 1);
    }
  }
  return made;
}

} // namespace afterbeat::papers
