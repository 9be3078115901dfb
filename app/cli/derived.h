/// Derived entries in the commands: when they are made, and how they are told.
#pragma once

#include "app/cli/command.h"
#include "core/signal/derive/derive.h"

#include <nlohmann/json.hpp>

namespace afterbeat::cli {

/// Opens a source and adds what `mode` lets be derived. Samples are read only where something is;
/// rhythm hints, which no figure needs, are made for `DeriveMode::always` alone.
struct OpenedAndDerived {
  Opened opened;
  Derived derived;
};
[[nodiscard]] tl::expected<OpenedAndDerived, std::string> openAndDerive(const std::string& file,
                                                                        DeriveMode mode);

/// What was derived, with its caution; null where nothing was.
[[nodiscard]] nlohmann::ordered_json derivedJson(const OpenedAndDerived& from,
                                                 const Figures& figures);

/// The same as lines of text; empty where nothing was.
[[nodiscard]] std::string derivedText(const OpenedAndDerived& from, const Figures& figures);

} // namespace afterbeat::cli
