#include "core/signal/dsp/spectrum.h"

#include <fftw3.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>
#include <mutex>
#include <numbers>

namespace afterbeat {

namespace {

struct Free {
  void operator()(void* memory) const { fftw_free(memory); }
};

/// `length` reals and the half spectrum that belongs to them, aligned as plans want it.
struct Arrays {
  explicit Arrays(std::size_t length)
      : real(fftw_alloc_real(length)), complex(fftw_alloc_complex(length / 2 + 1)) {}
  std::unique_ptr<double[], Free> real;
  std::unique_ptr<fftw_complex[], Free> complex;
};

/// Both directions for one length.
struct Plans {
  fftw_plan forwards = nullptr, backwards = nullptr;
};

/// Only running a plan is safe in several threads, so making one is guarded. Plans are estimated,
/// not measured: the same sums in the same order every time. They live as long as the program.
const Plans& plansFor(std::size_t length) {
  static std::mutex guard;
  static auto& known = *new std::map<std::size_t, Plans>;
  const std::scoped_lock lock(guard);
  auto& plans = known[length];
  if (plans.forwards == nullptr) {
    const Arrays scratch(length);
    const auto n = static_cast<int>(length);
    plans.forwards =
        fftw_plan_dft_r2c_1d(n, scratch.real.get(), scratch.complex.get(), FFTW_ESTIMATE);
    plans.backwards =
        fftw_plan_dft_c2r_1d(n, scratch.complex.get(), scratch.real.get(), FFTW_ESTIMATE);
  }
  return plans;
}

double squaredSize(const fftw_complex& x) {
  return x[0] * x[0] + x[1] * x[1];
}

/// The smallest length >= `least` of the form 2^a 3^b 5^c: those are quick.
std::size_t quickLength(std::size_t least) {
  for (std::size_t n = least;; ++n) {
    std::size_t rest = n;
    for (const std::size_t factor : {2U, 3U, 5U}) {
      while (rest % factor == 0) {
        rest /= factor;
      }
    }
    if (rest == 1) {
      return n;
    }
  }
}

} // namespace

std::vector<double> windowWeights(Window window, std::size_t length) {
  std::vector<double> out(length, 1.0);
  if (length == 1) {
    return out;
  }
  for (std::size_t i = 0; i < length; ++i) {
    const double angle =
        2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(length);
    switch (window) {
    case Window::rectangular:
      break;
    case Window::hann:
      out[i] = 0.5 - 0.5 * std::cos(angle);
      break;
    case Window::hamming:
      out[i] = 0.54 - 0.46 * std::cos(angle);
      break;
    case Window::blackman:
      out[i] = 0.42 - 0.5 * std::cos(angle) + 0.08 * std::cos(2 * angle);
      break;
    }
  }
  return out;
}

struct Spectrum::Buffers {
  Arrays arrays;
  Plans plans;
};

Spectrum::~Spectrum() = default;
Spectrum::Spectrum(Spectrum&&) noexcept = default;
Spectrum& Spectrum::operator=(Spectrum&&) noexcept = default;

Spectrum::Spectrum(std::size_t length, double rateHz, Window window)
    : rateHz_(rateHz), weights_(windowWeights(window, length)), out_(length / 2 + 1),
      buffers_(new Buffers{Arrays(length), plansFor(length)}) {
  assert(length > 0 && rateHz > 0);
  for (const double w : weights_) {
    sum_ += w;
    squares_ += w * w;
  }
}

void Spectrum::transform(std::span<const double> values) {
  assert(values.size() == length());
  auto& [arrays, plans] = *buffers_;
  for (std::size_t i = 0; i < length(); ++i) {
    arrays.real[i] = values[i] * weights_[i];
  }
  fftw_execute_dft_r2c(plans.forwards, arrays.real.get(), arrays.complex.get());
  for (std::size_t k = 0; k < bins(); ++k) {
    out_[k] = squaredSize(arrays.complex[k]);
  }
}

std::span<const double> Spectrum::amplitude(std::span<const double> values) {
  transform(values);
  for (std::size_t k = 0; k < bins(); ++k) {
    out_[k] = std::sqrt(out_[k]) * (isPair(k) ? 2 : 1) / sum_;
  }
  return out_;
}

std::span<const double> Spectrum::power(std::span<const double> values) {
  transform(values);
  const double unit = 1 / (rateHz_ * squares_);
  for (std::size_t k = 0; k < bins(); ++k) {
    out_[k] *= isPair(k) ? 2 * unit : unit;
  }
  return out_;
}

struct Autocorrelation::Buffers {
  std::size_t padded;
  Arrays arrays;
  Plans plans;
};

Autocorrelation::~Autocorrelation() = default;
Autocorrelation::Autocorrelation(Autocorrelation&&) noexcept = default;
Autocorrelation& Autocorrelation::operator=(Autocorrelation&&) noexcept = default;

Autocorrelation::Autocorrelation(std::size_t length) : length_(length), out_(length) {
  assert(length > 0);
  const auto padded = quickLength(2 * length);
  buffers_.reset(new Buffers{padded, Arrays(padded), plansFor(padded)});
}

std::span<const double> Autocorrelation::of(std::span<const double> values) {
  assert(values.size() == length_);
  auto& [padded, arrays, plans] = *buffers_;
  std::copy(values.begin(), values.end(), arrays.real.get());
  std::fill(arrays.real.get() + length_, arrays.real.get() + padded, 0.0);
  fftw_execute_dft_r2c(plans.forwards, arrays.real.get(), arrays.complex.get());
  for (std::size_t k = 0; k < padded / 2 + 1; ++k) {
    fftw_complex& x = arrays.complex[k];
    x[0] = squaredSize(x);
    x[1] = 0;
  }
  fftw_execute_dft_c2r(plans.backwards, arrays.complex.get(), arrays.real.get());
  for (std::size_t i = 0; i < length_; ++i) {
    out_[i] = arrays.real[i] / static_cast<double>(padded);
  }
  return out_;
}

} // namespace afterbeat
