#include "app/window/compare/archive_words.h"

#include "app/papers/phrase_words.h"

#include <QStringList>

namespace afterbeat::window {

namespace {

QString inOrder(const std::vector<Phrase>& said) {
  QStringList sentences;
  for (const Phrase& one : said) {
    sentences << papers::phraseWords(one.parts);
  }
  return sentences.join(QLatin1Char(' '));
}

} // namespace

QString archiveWords(const archive::ArchiveError& error) {
  return inOrder(error.said);
}

QString archiveWords(const archive::RefusedFile& file) {
  return file.said.empty() ? papers::clauseWords(file.sentence) : inOrder(file.said);
}

} // namespace afterbeat::window
