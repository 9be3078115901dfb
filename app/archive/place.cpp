#include "app/archive/place.h"

#include <algorithm>
#include <cctype>
#include <cstdlib>

#include <fmt/format.h>

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

bool onThisMachine(const std::string& host) {
  return host.empty() || host.front() == '/' || host.front() == '@' || host == "localhost" ||
         host == "::1" || host.starts_with("127.");
}

} // namespace

Expected<ArchivePlace> ArchivePlace::from(std::string_view typed) {
  if (typed.starts_with(kService)) {
    const std::string_view name = typed.substr(kService.size());
    if (!plainName(name)) {
      return tl::unexpected(ArchiveError{fmt::format(
          "“{}” is no name of a service: letters, digits, “_”, “-” and “.” only.", name)});
    }
    return ArchivePlace{true, std::string(name)};
  }
  if (typed.empty()) {
    return tl::unexpected(
        ArchiveError{"No archive was named. Name a file, or service:NAME for a shared one."});
  }
  return ArchivePlace{false, std::string(typed)};
}

std::string ArchivePlace::words() const {
  return shared ? std::string(kService) + name : name;
}

Expected<ServiceFacts> serviceIn(std::string_view fileText, const std::string& name) {
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
    const auto equals = line.find('=');
    if (!inside || equals == std::string_view::npos) {
      continue;
    }
    const std::string_view key = trimmed(line.substr(0, equals));
    const std::string value(trimmed(line.substr(equals + 1)));
    if (key == "host" || (key == "hostaddr" && facts.host.empty())) {
      facts.host = value;
    } else if (key == "sslmode") {
      facts.sslMode = value;
    } else if (key == "password") {
      return tl::unexpected(ArchiveError{fmt::format(
          "The service “{}” holds a password. Take it out and put it into PostgreSQL's password "
          "file (~/.pgpass), which only you can read.",
          name)});
    }
  }
  if (!found) {
    return tl::unexpected(ArchiveError{
        fmt::format("There is no service “{}” in PostgreSQL's service file (~/.pg_service.conf). "
                    "Ask whoever looks after the shared archive for its lines.",
                    name)});
  }
  return facts;
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

std::string connectOptions(const std::string& service, const ServiceFacts& facts) {
  std::string options = "service=" + service + ";application_name=afterbeat;connect_timeout=10";
  const std::string& mode = facts.sslMode;
  if (!onThisMachine(facts.host)) {
    const bool stricter = mode == "verify-ca" || mode == "verify-full";
    options += ";sslmode=" + (stricter ? mode : std::string("require"));
  }
  return options;
}

} // namespace afterbeat::archive
