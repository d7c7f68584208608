#include "core/parts/armature.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr double kNotDue = -1;
constexpr double kNever_s = std::numeric_limits<double>::infinity();

/// A contact that falls back on the other lands four times, each time for half as long as before, and is off
/// it as long as it was on it. Common practice, no published source: pictures of bouncing show three to six
/// ever shorter gaps.
constexpr int kLandings = 4;
constexpr double kAllLandings = 2 * (1 + 0.5 + 0.25 + 0.125); ///< in units of the first

} // namespace

Armature::Armature(const ArmatureValues& values) : m_values(values) {
    // Without a gap between the two the armature could neither stay nor go.
    m_values.dropOut_A = std::min(m_values.dropOut_A, 0.95 * m_values.pullIn_A);
}

std::span<const double> Armature::atStart() {
    static constexpr std::array<double, ArmatureMemory::kSize> kAtRest{
        ArmatureMemory::Out, 0, 0, 1, 0, kNever_s};
    return kAtRest;
}

double Armature::eventValue(std::size_t event, double current_A, double time_s, ArmatureMemory memory) const {
    const auto state = memory.state();
    const double size_A = std::abs(current_A);
    if (event == 3) {
        return time_s >= memory.bounceDue_s() ? 1 : kNotDue;
    }
    if (event == 0) {
        const bool free = state == ArmatureMemory::Out || state == ArmatureMemory::MovingOut;
        return free ? size_A - m_values.pullIn_A : kNotDue;
    }
    if (event == 1) {
        const bool held = state == ArmatureMemory::In || state == ArmatureMemory::MovingIn;
        return held ? m_values.dropOut_A - size_A : kNotDue;
    }
    return memory.moving() ? time_s - memory.due_s() : kNotDue;
}

double Armature::position(double time_s, ArmatureMemory memory) const {
    const double left_s = memory.due_s() - time_s;
    switch (memory.state()) {
    case ArmatureMemory::Out:
        return 0;
    case ArmatureMemory::In:
        return 1;
    case ArmatureMemory::MovingIn:
        return std::clamp(1 - left_s / m_values.operate_s, 0.0, 1.0);
    case ArmatureMemory::MovingOut:
        return std::clamp(left_s / m_values.release_s, 0.0, 1.0);
    }
    return 0;
}

std::string Armature::happen(std::size_t event, double time_s, std::span<double> memory) const {
    if (event == 3) {
        bounce(time_s, memory);
        return {};
    }
    const double behind = position(time_s, {memory});
    if (event == 0) {
        memory[0] = ArmatureMemory::MovingIn;
        memory[1] = time_s + (1 - behind) * m_values.operate_s;
        memory[3] = 0;
        return words("armature pulls in");
    }
    if (event == 1) {
        memory[0] = ArmatureMemory::MovingOut;
        memory[1] = time_s + behind * m_values.release_s;
        memory[4] = 0;
        memory[5] = kNever_s;
        return words("armature lets go");
    }
    return arrive(time_s, memory);
}

std::string Armature::arrive(double time_s, std::span<double> memory) const {
    const bool in = ArmatureMemory{memory}.state() == ArmatureMemory::MovingIn;
    const bool wasClosed = ArmatureMemory{memory}.makeClosed();
    memory[0] = in ? ArmatureMemory::In : ArmatureMemory::Out;
    memory[2] = in ? 1 : 0;
    memory[3] = in ? 0 : 1;
    if (in == wasClosed) {
        return words("armature is back"); // it turned on the way, the make contact did not move
    }
    if (in && m_values.bounce_s > 0) {
        memory[5] = time_s + m_values.bounce_s / kAllLandings;
    }
    return in ? words("contacts close") : words("contacts open");
}

void Armature::bounce(double time_s, std::span<double> memory) const {
    const int count = static_cast<int>(memory[4]) + 1;
    const bool over = count == 2 * kLandings;
    memory[4] = over ? 0 : count;
    memory[5] = over ? kNever_s : time_s + m_values.bounce_s / kAllLandings * std::ldexp(1.0, -(count / 2));
}

double Armature::due_s(ArmatureMemory memory) {
    return std::min(memory.moving() ? memory.due_s() : kNever_s, memory.bounceDue_s());
}

} // namespace pumpwright
