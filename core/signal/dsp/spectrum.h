/// Amplitude and power over frequency, and autocorrelation, of stretches of one length.
///
/// Plans are made once a length and shared. Any number of objects may be made and used in any
/// number of threads; one object belongs to one thread at a time. Nothing is allocated but by the
/// constructors. Transforms by FFTW: Frigo and Johnson, Proc IEEE 2005;93:216-231 (from memory).
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace afterbeat {

/// Weights laid over a stretch before it is transformed; all but `rectangular` are periodic.
enum class Window : unsigned char { rectangular, hann, hamming, blackman };

/// The weights of a window of `length` samples; of a single one: 1.
[[nodiscard]] std::vector<double> windowWeights(Window window, std::size_t length);

/// Single-sided spectra of stretches of `length` samples.
class Spectrum {
public:
  /// `length` > 0.
  Spectrum(std::size_t length, double rateHz, Window window = Window::rectangular);
  ~Spectrum();
  Spectrum(Spectrum&&) noexcept;
  Spectrum& operator=(Spectrum&&) noexcept;

  [[nodiscard]] std::size_t length() const { return weights_.size(); }
  /// Frequencies from 0 to half the rate: length / 2 + 1.
  [[nodiscard]] std::size_t bins() const { return length() / 2 + 1; }
  [[nodiscard]] double hzPerBin() const { return rateHz_ / static_cast<double>(length()); }

  /// Amplitude of the sine at each frequency, in the unit of the values: 2 |X| / sum of weights, at
  /// 0 and at half the rate |X| / sum of weights. `values` has `length` samples. The result is
  /// valid until the next call.
  [[nodiscard]] std::span<const double> amplitude(std::span<const double> values);

  /// Power density, unit^2/Hz: 2 |X|^2 / (rate x sum of squared weights), half that at 0 and at
  /// half the rate. Its sum x `hzPerBin` is the mean square (rectangular). As `amplitude`.
  [[nodiscard]] std::span<const double> power(std::span<const double> values);

private:
  /// Squared size of the transform at each frequency, into `out_`.
  void transform(std::span<const double> values);
  /// Whether bin `k` stands for two frequencies, one of them negative.
  [[nodiscard]] bool isPair(std::size_t k) const { return k > 0 && 2 * k < length(); }

  struct Buffers;
  double rateHz_ = 0;
  double sum_ = 0, squares_ = 0;
  std::vector<double> weights_;
  std::vector<double> out_;
  std::unique_ptr<Buffers> buffers_;
};

/// Autocorrelation of stretches of `length` samples, in O(n log n).
class Autocorrelation {
public:
  /// `length` > 0.
  explicit Autocorrelation(std::size_t length);
  ~Autocorrelation();
  Autocorrelation(Autocorrelation&&) noexcept;
  Autocorrelation& operator=(Autocorrelation&&) noexcept;

  /// Sum over i of v[i] v[i + lag] for lags 0 to `length` - 1; no mean is taken off, nothing is
  /// divided. The result is valid until the next call.
  [[nodiscard]] std::span<const double> of(std::span<const double> values);

private:
  struct Buffers;
  std::size_t length_ = 0;
  std::vector<double> out_;
  std::unique_ptr<Buffers> buffers_;
};

} // namespace afterbeat
