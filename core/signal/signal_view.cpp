#include "core/signal/signal_view.h"

#include <array>
#include <string_view>

namespace afterbeat {

namespace {

struct UnitFactor {
  std::string_view quantity, unit;
  double factor;
};

/// UCUM units a device may use. Weights in kilograms-force are a usual way to tell a force; 1 g is
/// the standard acceleration of free fall, 9.80665 m/s2 (UCUM `[g]`).
constexpr std::array kUnits{
    UnitFactor{"ecg", "mV", 1},
    UnitFactor{"ecg", "uV", 1e-3},
    UnitFactor{"ecg", "nV", 1e-6},
    UnitFactor{"ecg", "V", 1e3},
    UnitFactor{"impedance", "Ohm", 1},
    UnitFactor{"impedance", "mOhm", 1e-3},
    UnitFactor{"impedance", "kOhm", 1e3},
    UnitFactor{"acceleration", "m/s2", 1},
    UnitFactor{"acceleration", "cm/s2", 1e-2},
    UnitFactor{"acceleration", "mm/s2", 1e-3},
    UnitFactor{"acceleration", "[g]", 9.80665},
    UnitFactor{"acceleration", "m[g]", 9.80665e-3},
    UnitFactor{"depth", "mm", 1},
    UnitFactor{"depth", "cm", 10},
    UnitFactor{"depth", "m", 1e3},
    UnitFactor{"depth", "[in_i]", 25.4},
    UnitFactor{"force", "N", 1},
    UnitFactor{"force", "kN", 1e3},
    UnitFactor{"force", "kgf", 9.80665},
    UnitFactor{"force", "gf", 9.80665e-3},
    UnitFactor{"force", "[lbf_av]", 4.4482216152605},
};

} // namespace

std::optional<double> factorToUsual(std::string_view quantity, std::string_view unit) {
  for (const UnitFactor& known : kUnits) {
    if (known.quantity == quantity && known.unit == unit) {
      return known.factor;
    }
  }
  return std::nullopt;
}

void readValues(const Channel& channel, const SampleBlock& block, std::size_t begin,
                std::size_t count, double factor, std::vector<double>& into) {
  into.resize(count);
  const std::int16_t* raw = channel.samples.data() + block.first + begin;
  const double scale = channel.scale * factor;
  const double offset = channel.offset * factor;
  for (std::size_t i = 0; i < count; ++i) {
    into[i] = raw[i] == kMissingSample ? std::numeric_limits<double>::quiet_NaN()
                                       : static_cast<double>(raw[i]) * scale + offset;
  }
}

} // namespace afterbeat
