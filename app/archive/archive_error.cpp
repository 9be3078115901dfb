#include "app/archive/archive_error.h"

namespace afterbeat::archive {

ArchiveError::ArchiveError(std::vector<Phrase> phrases) : said(std::move(phrases)) {
  for (const Phrase& one : said) {
    sentence += (sentence.empty() ? "" : " ") + afterbeat::sentence(one);
  }
}

} // namespace afterbeat::archive
