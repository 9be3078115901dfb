/// A made-up compression artefact: harmonics that change from one compression to the next.
#pragma once

#include "core/record/time.h"

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>
#include <vector>

namespace afterbeat {

struct MadeArtefact {
  std::vector<double> values;
  /// As a detector reports them: up to 25 ms off.
  std::vector<Time> deepest;
};

/// `count` samples with compressions from `begin` to `end` seconds. Intervals vary by 10 %,
/// amplitudes by 25 %, each of six harmonics by 25 % of its own from one compression to the next.
inline MadeArtefact madeArtefact(std::size_t count, double rateHz, unsigned seed, double begin,
                                 double end) {
  std::mt19937 dice(seed);
  const auto swing = [&dice](double size) {
    return size * (static_cast<double>(dice()) / 2147483648.0 - 1);
  };
  std::vector<double> places;
  const double every = 0.54 + swing(0.06);
  for (double at = begin; at < end; at += every * (1 + swing(0.1))) {
    places.push_back(at);
  }
  struct Term {
    double cosine, sine;
  };
  std::vector<Term> usual;
  for (int k = 1; k <= 6; ++k) {
    usual.push_back({swing(1.0 / k), swing(1.0 / k)});
  }
  usual.front().cosine = 1;
  std::vector<std::vector<Term>> terms(places.size(), usual);
  for (auto& one : terms) {
    const double size = 1 + swing(0.25);
    for (Term& term : one) {
      term.cosine *= size * (1 + swing(0.25));
      term.sine *= size * (1 + swing(0.25));
    }
  }

  MadeArtefact out{std::vector<double>(count, 0.0), {}};
  for (std::size_t turn = 0; turn + 1 < places.size(); ++turn) {
    const double length = places[turn + 1] - places[turn];
    const auto first = static_cast<std::size_t>(std::ceil(places[turn] * rateHz));
    for (std::size_t i = first; i < count && static_cast<double>(i) / rateHz < places[turn + 1];
         ++i) {
      const double phase = (static_cast<double>(i) / rateHz - places[turn]) / length;
      for (std::size_t k = 0; k < usual.size(); ++k) {
        const double angle = 2 * std::numbers::pi * static_cast<double>(k + 1) * phase;
        const Term &here = terms[turn][k], &next = terms[turn + 1][k];
        out.values[i] += (here.cosine + phase * (next.cosine - here.cosine)) * std::cos(angle) +
                         (here.sine + phase * (next.sine - here.sine)) * std::sin(angle);
      }
    }
  }
  for (const double at : places) {
    out.deepest.push_back(*timeFromSeconds(at + swing(0.025)));
  }
  return out;
}

/// Mean square about the mean of values [begin, end) minus those of `other`; NaN left out.
inline double meanSquare(const std::vector<double>& values, const std::vector<double>& other,
                         std::size_t begin, std::size_t end) {
  double sum = 0, squares = 0, n = 0;
  for (std::size_t i = begin; i < end; ++i) {
    const double value = values[i] - other[i];
    if (!std::isnan(value)) {
      sum += value;
      squares += value * value;
      ++n;
    }
  }
  return squares / n - (sum / n) * (sum / n);
}

/// Scales an artefact so that the signal has `db` decibels more than it within [begin, end).
inline void scaleToSnr(std::vector<double>& artefact, const std::vector<double>& signal, double db,
                       std::size_t begin, std::size_t end) {
  const std::vector<double> nothing(signal.size(), 0.0);
  const double factor = std::sqrt(meanSquare(signal, nothing, begin, end) /
                                  meanSquare(artefact, nothing, begin, end)) *
                        std::pow(10, -db / 20);
  for (double& value : artefact) {
    value *= factor;
  }
}

/// Decibels by which a filter brings the signal nearer to what it was.
inline double gainDb(const std::vector<double>& clean, const std::vector<double>& disturbed,
                     const std::vector<double>& filtered, std::size_t begin, std::size_t end) {
  return 10 * std::log10(meanSquare(disturbed, clean, begin, end) /
                         meanSquare(filtered, clean, begin, end));
}

} // namespace afterbeat
