#include "app/archive/place.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cstdlib>
#include <fstream>

namespace afterbeat::archive {

namespace {

constexpr std::string_view kService = "service:";

std::string_view trimmed(std::string_view text) {
  const auto from = text.find_first_not_of(" \t\r");
  if (from == std::string_view::npos) {
    return {};
  }
  return text.substr(from, text.find_last_not_of(" \t\r") - from + 1);
}

/// Characters that a service's name may have here, so that it can stand in a list of options.
bool plainName(std::string_view name) {
  return !name.empty() && std::all_of(name.begin(), name.end(), [](unsigned char c) {
    return std::isalnum(c) != 0 || c == '_' || c == '-' || c == '.';
  });
}

std::filesystem::path inFolder(const char* variable, const char* file) {
  const char* folder = std::getenv(variable);
  return folder != nullptr && *folder != '\0' ? std::filesystem::path(folder) / file
                                              : std::filesystem::path{};
}

/// Four numbers to 255, the first 127.
bool loopbackAddress(const std::string& host) {
  int parts = 0;
  for (std::string_view rest = host; parts < 5; ++parts) {
    const auto dot = rest.find('.');
    const std::string_view part = rest.substr(0, dot);
    int value = -1;
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), value);
    if (error != std::errc{} || end != part.data() + part.size() || value < 0 || value > 255 ||
        (parts == 0 && value != 127)) {
      return false;
    }
    if (dot == std::string_view::npos) {
      return parts == 3;
    }
    rest = rest.substr(dot + 1);
  }
  return false;
}

bool oneOnThisMachine(const std::string& host) {
  return host.empty() || host.front() == '/' || host.front() == '@' || host == "localhost" ||
         host == "::1" || loopbackAddress(host);
}

bool onThisMachine(const std::string& hosts) {
  std::size_t from = 0;
  while (true) {
    const auto comma = hosts.find(',', from);
    if (!oneOnThisMachine(std::string(trimmed(hosts.substr(from, comma - from))))) {
      return false;
    }
    if (comma == std::string::npos) {
      return true;
    }
    from = comma + 1;
  }
}

std::string fromEnvironment(const char* variable) {
  const char* value = std::getenv(variable);
  return value != nullptr ? value : "";
}

void keepFirst(std::string& kept, const std::string& value) {
  if (kept.empty()) {
    kept = value;
  }
}

} // namespace

bool isDatabaseFile(const std::filesystem::path& path) {
  constexpr std::string_view kBegin("SQLite format 3\0", 16);
  std::array<char, kBegin.size()> begin{};
  std::ifstream file(path, std::ios::binary);
  return file.read(begin.data(), begin.size()) &&
         std::equal(begin.begin(), begin.end(), kBegin.begin());
}

Expected<ArchivePlace> ArchivePlace::from(std::string_view typed) {
  if (typed.starts_with(kService)) {
    const std::string_view name = typed.substr(kService.size());
    if (!plainName(name)) {
      return tl::unexpected(ArchiveError(
          inEnglish("Importers",
                    "“%1” is no name of a service: letters, digits, “_”, “-” and “.” only."),
          name));
    }
    return ArchivePlace{true, std::string(name)};
  }
  if (typed.empty()) {
    return tl::unexpected(ArchiveError(inEnglish(
        "Importers", "No archive was named. Name a file, or service:NAME for a shared one.")));
  }
  return ArchivePlace{false, std::string(typed)};
}

std::string ArchivePlace::words() const {
  return shared ? std::string(kService) + name : name;
}

std::optional<ServiceFacts> serviceIn(std::string_view fileText, const std::string& name) {
  ServiceFacts facts;
  bool inside = false, found = false;
  while (!fileText.empty()) {
    const auto end = fileText.find('\n');
    const std::string_view line = trimmed(fileText.substr(0, end));
    fileText = end == std::string_view::npos ? std::string_view{} : fileText.substr(end + 1);
    if (line.empty() || line.front() == '#') {
      continue;
    }
    if (line.front() == '[') {
      inside = !found && line == "[" + name + "]";
      found = found || inside;
      continue;
    }
    if (inside && line.starts_with("ldap")) {
      keepFirst(facts.host, std::string(line)); // a directory says where: it may be anywhere
    }
    const auto equals = line.find('=');
    if (!inside || equals == std::string_view::npos) {
      continue;
    }
    const std::string_view key = trimmed(line.substr(0, equals));
    const std::string value(trimmed(line.substr(equals + 1)));
    if (key == "host") {
      keepFirst(facts.host, value);
    } else if (key == "hostaddr") {
      keepFirst(facts.hostAddress, value);
    } else if (key == "sslmode") {
      keepFirst(facts.sslMode, value);
    } else if (key == "password") {
      facts.password = true;
    }
  }
  if (!found) {
    return std::nullopt;
  }
  return facts;
}

bool othersMayRead(const std::filesystem::path& path) {
  using std::filesystem::perms;
  std::error_code error;
  const perms may = std::filesystem::status(path, error).permissions();
  return !error && (may & (perms::group_read | perms::others_read)) != perms::none;
}

std::vector<std::filesystem::path> serviceFiles() {
  std::vector<std::filesystem::path> files;
  if (const char* named = std::getenv("PGSERVICEFILE"); named != nullptr && *named != '\0') {
    files.emplace_back(named);
  } else if (auto own = inFolder("HOME", ".pg_service.conf"); !own.empty()) {
    files.push_back(std::move(own));
  }
  auto common = inFolder("PGSYSCONFDIR", "pg_service.conf");
  files.push_back(common.empty() ? "/etc/postgresql-common/pg_service.conf" : std::move(common));
  return files;
}

ServiceFacts completedFromEnvironment(ServiceFacts facts) {
  keepFirst(facts.hostAddress, fromEnvironment("PGHOSTADDR"));
  keepFirst(facts.host, fromEnvironment("PGHOST"));
  keepFirst(facts.sslMode, fromEnvironment("PGSSLMODE"));
  return facts;
}

std::string connectOptions(const std::string& service, const ServiceFacts& facts) {
  std::string options = "service=" + service + ";application_name=afterbeat;connect_timeout=10";
  if (!facts.password) {
    // One that is given and empty keeps the library from the environment, not from its own file.
    options += ";password=''";
  }
  // The library connects to the address where both are given.
  if (!onThisMachine(facts.hostAddress.empty() ? facts.host : facts.hostAddress)) {
    const bool stricter = facts.sslMode == "verify-ca" || facts.sslMode == "verify-full";
    options += ";sslmode=" + (stricter ? facts.sslMode : std::string("require"));
  }
  return options;
}

} // namespace afterbeat::archive
