#include "core/study/tally.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {

Tally::Tally(double low, double high, double step)
    : m_low(low), m_step(step), m_steps(static_cast<std::size_t>(std::lround((high - low) / step)) + 1) {}

void Tally::add(double value) {
    const double last = static_cast<double>(m_steps.size() - 1);
    const double place = std::clamp(std::round((value - m_low) / m_step), 0.0, last);
    ++m_steps[static_cast<std::size_t>(place)];
    ++m_count;
}

double Tally::valueOfPlace(std::uint64_t place) const {
    std::uint64_t below = 0;
    std::size_t step = 0;
    while (below + m_steps[step] <= place) {
        below += m_steps[step++];
    }
    return m_low + static_cast<double>(step) * m_step;
}

double Tally::atShare(double share) const {
    const double place = share * static_cast<double>(m_count - 1);
    const auto below = static_cast<std::uint64_t>(place);
    return std::lerp(valueOfPlace(below), valueOfPlace(std::min(below + 1, m_count - 1)),
                     place - std::floor(place));
}

std::optional<Percentiles> Tally::percentiles() const {
    if (m_count == 0) {
        return std::nullopt;
    }
    return Percentiles{atShare(0.05), atShare(0.5), atShare(0.95)};
}

} // namespace pumpwright
