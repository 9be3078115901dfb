/// A season in which nobody and nothing can be recognised by name.
#pragma once

#include "app/papers/words.h"
#include "core/compare/marked_step.h"
#include "core/compare/season.h"
#include "core/guideline/profile.h"

#include <QByteArray>

namespace afterbeat::papers {

/// Stable names of sites, teams and records made with a secret: HMAC-SHA256 (RFC 2104) of what is
/// named, the first 40 or 60 bits in Crockford's base 32. Who does not hold the secret cannot try
/// names out; who holds it gets the same pseudonyms in every run.
class Pseudonyms {
public:
  /// With fewer bytes a secret could be guessed.
  static constexpr qsizetype kLeastSecret = 16;

  /// The words before a pseudonym are those of a language; the pseudonym itself is the same in all.
  explicit Pseudonyms(QByteArray secret, const Words& words = Words{});
  /// "Site 7K3Q-X2PM"; empty for an empty name.
  [[nodiscard]] std::string site(const std::string& name) const;
  [[nodiscard]] std::string team(const std::string& name) const;
  /// "Record 7K3Q-X2PM-0VT4", from its id, or without one from its file's name.
  [[nodiscard]] std::string record(const RecordFacts& facts) const;

private:
  [[nodiscard]] std::string pseudonym(const char* what, const QString& shown,
                                      const std::string& name, int letters) const;
  QByteArray secret_;
  /// "Site %1".
  QString site_, team_, record_;
};

/// The same season with pseudonyms for sites, teams and records; devices, ids and files are empty,
/// and days are cut to their month, since a day alone can tell which rescue it was: the first
/// stands for it, and `RecordFacts::monthOnly` says so. Its columns are those of `season`.
[[nodiscard]] Season withoutIdentity(const Season& season, const Pseudonyms& pseudonyms);

/// Marks without their words, which are somebody's free text.
[[nodiscard]] std::vector<MarkedStep> withoutIdentity(std::vector<MarkedStep> steps);

/// A guideline of somebody's own without its name, which is free text; others as they are.
[[nodiscard]] Profile withoutIdentity(Profile profile);

} // namespace afterbeat::papers
