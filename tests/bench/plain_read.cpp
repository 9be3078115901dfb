/// The plain way to read a log, to compare with: nlohmann for every line, Qt for base64 and
/// SHA-256.
#include <QByteArray>
#include <QCryptographicHash>
#include <QFile>

#include <cstdio>
#include <vector>

#include <nlohmann/json.hpp>

int main(int argc, char** argv) {
  QFile file(argc > 1 ? argv[1] : "");
  if (!file.open(QIODevice::ReadOnly)) {
    return 3;
  }
  QCryptographicHash hash(QCryptographicHash::Sha256);
  std::vector<QByteArray> blocks;
  long entries = 0;
  while (!file.atEnd()) {
    const QByteArray line = file.readLine();
    hash.addData(line);
    const auto object = nlohmann::json::parse(line.begin(), line.end());
    if (object.value("type", "") == "samples") {
      blocks.push_back(
          QByteArray::fromBase64(QByteArray::fromStdString(object.at("data").get<std::string>())));
    }
    ++entries;
  }
  std::printf("%ld lines, %zu blocks, %s\n", entries, blocks.size(),
              hash.result().toHex().constData());
  return 0;
}
