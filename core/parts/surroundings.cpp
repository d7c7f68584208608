#include "core/parts/surroundings.h"

#include "core/units/atmosphere.h"

#include <algorithm>
#include <limits>

namespace pumpwright {
namespace {

double rise_s(const Press& press) {
    return std::max(press.rise_s, 1e-3);
}

double forceOf(const Press& press, double time_s) {
    const double rise = rise_s(press);
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
        const double rise = rise_s(press);
        kinks.insert(kinks.end(), {press.at_s, press.at_s + rise, press.at_s + press.hold_s,
                                   press.at_s + press.hold_s + rise});
    }
    for (const SwitchMove& move : plan.switchMoves) {
        kinks.push_back(move.at_s);
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

Surroundings::Surroundings(DrivePlan plan) {
    followPlan(std::move(plan));
}

void Surroundings::followPlan(DrivePlan plan) {
    m_plan = std::move(plan);
    m_kinks = kinksOf(m_plan);
    m_firstPressure_Pa = standardPressure_Pa(altitude_m(m_plan, 0));
    const auto earlier = [](const auto& a, const auto& b) { return a.at_s < b.at_s; };
    m_presses = m_plan.presses;
    std::stable_sort(m_presses.begin(), m_presses.end(), earlier);
    m_longestPress_s = 0;
    for (const Press& press : m_presses) {
        m_longestPress_s = std::max(m_longestPress_s, press.hold_s + rise_s(press));
    }
    m_moves.clear();
    for (const SwitchMove& move : m_plan.switchMoves) {
        m_moves[move.part].push_back(move);
    }
    for (auto& [part, moves] : m_moves) {
        std::stable_sort(moves.begin(), moves.end(), earlier);
    }
}

double Surroundings::ambientPressure_Pa(double time_s) const {
    return m_plan.altitude.size() < 2 ? m_firstPressure_Pa : standardPressure_Pa(altitude_m(m_plan, time_s));
}

double Surroundings::pedalForce_N(double time_s) const {
    auto press = std::upper_bound(m_presses.begin(), m_presses.end(), time_s,
                                  [](double time, const Press& p) { return time < p.at_s; });
    double force = 0;
    while (press != m_presses.begin() && (--press)->at_s >= time_s - m_longestPress_s) {
        force = std::max(force, forceOf(*press, time_s));
    }
    return force;
}

bool Surroundings::charging(double time_s) const {
    return std::any_of(m_plan.charging.begin(), m_plan.charging.end(),
                       [&](const ChargingSpan& span) { return span.from_s <= time_s && time_s < span.to_s; });
}

bool Surroundings::switchOn(const PartId& part, bool atStart, double time_s) const {
    const auto found = m_moves.find(part);
    if (found == m_moves.end()) {
        return atStart;
    }
    const auto& moves = found->second;
    const auto next = std::upper_bound(moves.begin(), moves.end(), time_s,
                                       [](double time, const SwitchMove& move) { return time < move.at_s; });
    return next == moves.begin() ? atStart : std::prev(next)->on;
}

double Surroundings::nextKink_s(double now_s) const {
    const auto next = std::upper_bound(m_kinks.begin(), m_kinks.end(), now_s);
    return next == m_kinks.end() ? std::numeric_limits<double>::infinity() : *next;
}

} // namespace pumpwright
