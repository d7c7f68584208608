#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace pumpwright {

/// Values below which 5, 50 and 95 % of the cars lie.
struct Percentiles {
    double p5 = 0;
    double p50 = 0;
    double p95 = 0;
    friend bool operator==(const Percentiles&, const Percentiles&) = default;
};

/// Counts values in steps of equal width, so that any number of them takes the same memory. What comes out
/// does not depend on the order in which they came.
class Tally {
public:
    /// Values beyond `low` and `high` count as these.
    Tally(double low, double high, double step);

    void add(double value);
    std::uint64_t count() const { return m_count; }

    /// By straight lines between the values in order, the least at 0 % and the greatest at 100 %; each value
    /// is known to half a step. Nothing of no values.
    std::optional<Percentiles> percentiles() const;

private:
    double atShare(double share) const;
    double valueOfPlace(std::uint64_t place) const;

    double m_low;
    double m_step;
    std::uint64_t m_count = 0;
    std::vector<std::uint64_t> m_steps;
};

} // namespace pumpwright
