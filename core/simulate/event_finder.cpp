#include "core/simulate/event_finder.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kEventResolution_s = 1e-8;

/// Shares of a step at which events are looked for: an event that comes and goes between them is missed.
constexpr double kLooks[] = {0.155, 0.4, 0.645, 1.0};

} // namespace

EventFinder::EventFinder(const DriveSystem& system) : m_system(system) {
    const auto laws = system.laws();
    for (std::size_t law = 0; law < laws.size(); ++law) {
        for (std::size_t event = 0; event < laws[law].law->eventCount(); ++event) {
            m_events.push_back({law, event});
        }
    }
}

std::vector<EventFinder::Due> EventFinder::dueAt(double time_s, std::span<const double> x) const {
    std::vector<Due> due;
    for (const Due& event : m_events) {
        const PlacedLaw& placed = m_system.laws()[event.law];
        if (placed.law->eventValue(event.event, m_system.pointFor(placed, time_s, x)) >= 0) {
            due.push_back(event);
        }
    }
    return due;
}

bool EventFinder::anyDue(const StepPolynomial& step, double time_s) {
    step.evaluate(time_s, m_x);
    return std::any_of(m_events.begin(), m_events.end(), [&](const Due& event) {
        const PlacedLaw& placed = m_system.laws()[event.law];
        return placed.law->eventValue(event.event, m_system.pointFor(placed, time_s, m_x)) >= 0;
    });
}

std::optional<double> EventFinder::firstWithin(const StepPolynomial& step, std::size_t size) {
    m_x.resize(size);
    double before_s = step.begin_s;
    for (const double share : kLooks) {
        double due_s = share < 1 ? step.begin_s + share * (step.end_s - step.begin_s) : step.end_s;
        if (!anyDue(step, due_s)) {
            before_s = due_s;
            continue;
        }
        while (due_s - before_s > std::max(kEventResolution_s, 1e-15 * due_s)) {
            const double middle_s = 0.5 * (before_s + due_s);
            if (middle_s <= before_s || middle_s >= due_s) {
                break;
            }
            (anyDue(step, middle_s) ? due_s : before_s) = middle_s;
        }
        return due_s;
    }
    return std::nullopt;
}

} // namespace pumpwright
