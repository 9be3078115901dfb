#include "app/archive/pseudonym_secret.h"

#include <QByteArray>
#include <QRandomGenerator>

namespace afterbeat::archive {

std::string newSecret() {
  QByteArray made(32, '\0');
  for (char& byte : made) {
    byte = static_cast<char>(QRandomGenerator::system()->bounded(256));
  }
  return made.toHex().toStdString();
}

Expected<std::string> pseudonymSecret(const Archive& archive) {
  static const std::string kName = "secret of pseudonyms";
  const auto known = archive.note(kName);
  if (!known || !known->empty()) {
    return known;
  }
  // Somebody else may have been faster.
  return archive.changeNote(
      kName, [](const std::string& there) { return there.empty() ? newSecret() : there; });
}

} // namespace afterbeat::archive
