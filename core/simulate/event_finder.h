#pragma once

#include "core/simulate/drive_system.h"
#include "core/simulate/radau.h"

#include <optional>
#include <span>
#include <vector>

namespace pumpwright {

/// Finds out which events of a system's laws are due, and when the first of a step is.
class EventFinder {
public:
    struct Due {
        std::size_t law;
        std::size_t event;
    };

    explicit EventFinder(const DriveSystem& system);

    /// Events that are due at this instant, in the order of the laws.
    std::vector<Due> dueAt(double time_s, std::span<const double> x) const;

    /// The earliest instant of an accepted step at which an event is due, to 10 ns; none where nothing is
    /// due.
    std::optional<double> firstWithin(const StepPolynomial& step, std::size_t size);

private:
    bool anyDue(const StepPolynomial& step, double time_s);

    const DriveSystem& m_system;
    std::vector<Due> m_events;
    std::vector<double> m_x;
};

} // namespace pumpwright
