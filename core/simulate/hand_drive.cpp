#include "core/simulate/hand_drive.h"

#include "core/parts/surroundings.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kUntilFurtherNotice_s = 1e9;
constexpr double kShortestPress_s = 1e-3;

} // namespace

HandDrive::HandDrive(const Circuit& circuit, const DriveOptions& options)
    : m_plan(atRest(circuit).plan), m_charging(!m_plan.charging.empty()), m_run(atRest(circuit), options) {}

Circuit HandDrive::atRest(const Circuit& circuit) {
    Circuit rest = circuit;
    DrivePlan& plan = rest.plan;
    const bool charging = Surroundings(plan).charging(0);
    plan.presses.clear();
    plan.switchMoves.clear();
    plan.charging.clear();
    if (charging) {
        plan.charging = {{0, kUntilFurtherNotice_s}};
    }
    if (plan.altitude.size() > 1) {
        plan.altitude.resize(1);
    }
    return rest;
}

bool HandDrive::pressPedal(double force_N) {
    if (m_pressed) {
        return true;
    }
    m_pressed = true;
    Press press;
    press.at_s = m_run.time_s();
    press.hold_s = kUntilFurtherNotice_s;
    press.force_N = force_N;
    m_plan.presses.push_back(press);
    return follow();
}

bool HandDrive::releasePedal() {
    if (!m_pressed) {
        return true;
    }
    m_pressed = false;
    Press& press = m_plan.presses.back();
    press.hold_s = std::max(m_run.time_s() - press.at_s, kShortestPress_s);
    return follow();
}

bool HandDrive::moveSwitch(const PartId& part, bool on) {
    const auto last = std::find_if(m_plan.switchMoves.rbegin(), m_plan.switchMoves.rend(),
                                   [&](const SwitchMove& move) { return move.part == part; });
    if (last != m_plan.switchMoves.rend() && last->on == on) {
        return true;
    }
    m_plan.switchMoves.push_back({m_run.time_s(), part, on, {}});
    return follow();
}

bool HandDrive::setCharging(bool charging) {
    if (charging == m_charging) {
        return true;
    }
    m_charging = charging;
    if (charging) {
        m_plan.charging.push_back({m_run.time_s(), kUntilFurtherNotice_s, {}});
    } else {
        m_plan.charging.back().to_s = m_run.time_s();
    }
    return follow();
}

DrivePlan HandDrive::plan() const {
    DrivePlan plan = m_plan;
    plan.duration_s = m_run.time_s();
    if (m_pressed) {
        Press& press = plan.presses.back();
        press.hold_s = std::max(plan.duration_s - press.at_s, kShortestPress_s);
    }
    if (m_charging) {
        plan.charging.back().to_s = plan.duration_s;
    }
    return plan;
}

} // namespace pumpwright
