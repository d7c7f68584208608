#include "core/parts/surroundings.h"

#include "core/units/atmosphere.h"

#include <algorithm>
#include <limits>

namespace pumpwright {
namespace {

double forceOf(const Press& press, double time_s) {
    const double rise = std::max(press.rise_s, 1e-3);
    const double since = time_s - press.at_s;
    const double released = since - press.hold_s;
    const double up = std::clamp(since / rise, 0.0, 1.0);
    const double down = std::clamp(released / rise, 0.0, 1.0);
    return press.force_N * std::max(0.0, up - down);
}

double altitude_m(const DrivePlan& plan, double time_s) {
    const auto& points = plan.altitude;
    if (points.empty()) {
        return 0;
    }
    const auto after = std::find_if(points.begin(), points.end(),
                                    [&](const AltitudePoint& point) { return point.at_s > time_s; });
    if (after == points.begin()) {
        return points.front().altitude_m;
    }
    const AltitudePoint& before = *std::prev(after);
    if (after == points.end()) {
        return before.altitude_m;
    }
    const double share = (time_s - before.at_s) / (after->at_s - before.at_s);
    return before.altitude_m + share * (after->altitude_m - before.altitude_m);
}

std::vector<double> kinksOf(const DrivePlan& plan) {
    std::vector<double> kinks;
    for (const Press& press : plan.presses) {
        const double rise = std::max(press.rise_s, 1e-3);
        kinks.insert(kinks.end(), {press.at_s, press.at_s + rise, press.at_s + press.hold_s,
                                   press.at_s + press.hold_s + rise});
    }
    for (const ChargingSpan& span : plan.charging) {
        kinks.insert(kinks.end(), {span.from_s, span.to_s});
    }
    for (const AltitudePoint& point : plan.altitude) {
        kinks.push_back(point.at_s);
    }
    std::sort(kinks.begin(), kinks.end());
    return kinks;
}

} // namespace

Surroundings::Surroundings(DrivePlan plan) : m_plan(std::move(plan)), m_kinks(kinksOf(m_plan)) {}

double Surroundings::ambientPressure_Pa(double time_s) const {
    return standardPressure_Pa(altitude_m(m_plan, time_s));
}

double Surroundings::pedalForce_N(double time_s) const {
    double force = 0;
    for (const Press& press : m_plan.presses) {
        force = std::max(force, forceOf(press, time_s));
    }
    return force;
}

bool Surroundings::charging(double time_s) const {
    return std::any_of(m_plan.charging.begin(), m_plan.charging.end(),
                       [&](const ChargingSpan& span) { return span.from_s <= time_s && time_s < span.to_s; });
}

double Surroundings::nextKink_s(double now_s) const {
    const auto next = std::upper_bound(m_kinks.begin(), m_kinks.end(), now_s);
    return next == m_kinks.end() ? std::numeric_limits<double>::infinity() : *next;
}

} // namespace pumpwright
