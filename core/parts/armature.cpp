#include "core/parts/armature.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr double kNotDue = -1;

} // namespace

Armature::Armature(const ArmatureValues& values) : m_values(values) {
    // Without a gap between the two the armature could neither stay nor go.
    m_values.dropOut_A = std::min(m_values.dropOut_A, 0.95 * m_values.pullIn_A);
}

std::span<const double> Armature::atStart() {
    static constexpr std::array<double, ArmatureMemory::kSize> kAtRest{ArmatureMemory::Out, 0, 0, 1};
    return kAtRest;
}

double Armature::eventValue(std::size_t event, double current_A, double time_s, ArmatureMemory memory) const {
    const auto state = memory.state();
    const double size_A = std::abs(current_A);
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
    const double behind = position(time_s, {memory});
    if (event == 0) {
        memory[0] = ArmatureMemory::MovingIn;
        memory[1] = time_s + (1 - behind) * m_values.operate_s;
        memory[3] = 0;
        return "armature pulls in";
    }
    if (event == 1) {
        memory[0] = ArmatureMemory::MovingOut;
        memory[1] = time_s + behind * m_values.release_s;
        return "armature lets go";
    }
    return arrive(memory);
}

std::string Armature::arrive(std::span<double> memory) {
    const bool in = ArmatureMemory{memory}.state() == ArmatureMemory::MovingIn;
    const bool wasClosed = ArmatureMemory{memory}.makeClosed();
    memory[0] = in ? ArmatureMemory::In : ArmatureMemory::Out;
    memory[2] = in ? 1 : 0;
    memory[3] = in ? 0 : 1;
    if (in == wasClosed) {
        return "armature is back"; // it turned on the way, the make contact did not move
    }
    return in ? "contacts close" : "contacts open";
}

double Armature::due_s(ArmatureMemory memory) {
    return memory.moving() ? memory.due_s() : std::numeric_limits<double>::infinity();
}

} // namespace pumpwright
