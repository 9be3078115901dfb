/// The tables of an archive, by version, and the steps from each version to the next.
#pragma once

#include "app/archive/database.h"

#include <QStringList>

#include <vector>

namespace afterbeat::archive {

/// What brings the tables from version `to - 1` to `to`.
struct Migration {
  int to = 0;
  /// In words for both databases: `{id}` a number given by the database, `{real}` a 64-bit float,
  /// `{bytes}` binary data, `{carrying}` a primary key that carries a figure's values, so
  /// that a range of it can be read alone, `{clustered}` rows kept in its order (each as far as the
  /// database can).
  QStringList statements;
};

/// The program's own, from an empty database on.
[[nodiscard]] const std::vector<Migration>& migrations();
/// The version that this program writes and reads.
[[nodiscard]] int schemaVersion();

/// The version of the tables that are there; 0: none.
[[nodiscard]] int versionOf(Database& database);

/// Brings the tables to the newest version of `steps`, in one transaction: all or nothing. A
/// version that is newer than the newest is refused, by name.
void migrate(Database& database, const std::vector<Migration>& steps = migrations());

/// Throws where the tables are not of this program's version: older ones wait for somebody who may
/// write and opens them, newer ones need a newer program.
void requireVersion(Database& database);

} // namespace afterbeat::archive
