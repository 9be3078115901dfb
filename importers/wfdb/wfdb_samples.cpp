#include "importers/wfdb/wfdb_samples.h"

namespace afterbeat {
namespace {

unsigned byteAt(std::string_view bytes, std::uint64_t i) {
  return static_cast<unsigned char>(bytes[static_cast<std::size_t>(i)]);
}

/// The low 12 bits as a two's-complement number.
std::int16_t signed12(unsigned bits) {
  const int value = static_cast<int>(bits & 0xFFFU);
  return static_cast<std::int16_t>(value < 0x800 ? value : value - 0x1000);
}

std::int16_t sampleAt(SampleForm form, std::string_view bytes, std::uint64_t i) {
  if (form == SampleForm::plain16) {
    const unsigned bits = byteAt(bytes, 2 * i) | byteAt(bytes, 2 * i + 1) << 8U;
    return static_cast<std::int16_t>(bits);
  }
  const std::uint64_t triple = i / 2 * 3;
  if (i % 2 == 0) {
    return signed12(byteAt(bytes, triple) | byteAt(bytes, triple + 1) << 8U);
  }
  return signed12((byteAt(bytes, triple + 1) & 0xF0U) << 4U | byteAt(bytes, triple + 2));
}

} // namespace

std::uint64_t samplesIn(SampleForm form, std::uint64_t bytes) {
  if (form == SampleForm::plain16) {
    return bytes / 2;
  }
  return bytes / 3 * 2 + (bytes % 3 == 2 ? 1 : 0);
}

std::vector<std::vector<std::int16_t>> unpackSamples(SampleForm form, std::string_view bytes,
                                                     std::uint64_t count, std::size_t signals) {
  std::vector<std::vector<std::int16_t>> dealt(signals);
  for (auto& one : dealt) {
    one.reserve(static_cast<std::size_t>(count / signals + 1));
  }
  std::size_t turn = 0;
  for (std::uint64_t i = 0; i < count; ++i) {
    dealt[turn].push_back(sampleAt(form, bytes, i));
    turn = turn + 1 == signals ? 0 : turn + 1;
  }
  return dealt;
}

std::int16_t sampleChecksum(const std::vector<std::int16_t>& samples) {
  std::uint16_t sum = 0;
  for (const auto sample : samples) {
    sum = static_cast<std::uint16_t>(sum + static_cast<std::uint16_t>(sample));
  }
  return static_cast<std::int16_t>(sum);
}

} // namespace afterbeat
