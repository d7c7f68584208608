#pragma once

#include <cstddef>
#include <span>
#include <string>

namespace pumpwright {

/// What moves a relay's armature. Pull-in must lie above drop-out.
struct ArmatureValues {
    double pullIn_A;
    double dropOut_A;
    double operate_s; ///< travel from rest until the make contact closes
    double release_s; ///< travel back until it opens
};

/// Where the armature and its contacts are: a view of the memory of the law that it belongs to.
///
/// The break contact opens as the armature leaves its rest and closes as it comes back; the make contact
/// closes on arrival and opens as the armature is back at rest. So it always breaks before it makes.
struct ArmatureMemory {
    static constexpr std::size_t kSize = 4;
    enum State { Out, MovingIn, In, MovingOut };

    std::span<const double> values;
    State state() const { return static_cast<State>(static_cast<int>(values[0])); }
    double due_s() const { return values[1]; }
    bool makeClosed() const { return values[2] > 0; }
    bool breakClosed() const { return values[3] > 0; }
    bool moving() const { return state() == MovingIn || state() == MovingOut; }
};

/// Events of an armature: 0 the current pulls it in, 1 the current lets it go, 2 it arrives. A change of the
/// current's mind on the way turns it back, and the way back takes the share of the travel already made.
class Armature {
public:
    static constexpr std::size_t kEvents = 3;

    explicit Armature(const ArmatureValues& values);

    static std::span<const double> atStart();
    double eventValue(std::size_t event, double current_A, double time_s, ArmatureMemory memory) const;
    std::string happen(std::size_t event, double time_s, std::span<double> memory) const;
    /// When a moving armature arrives; infinity for one at rest.
    static double due_s(ArmatureMemory memory);

private:
    /// How much of the way from out to in lies behind it, 0…1.
    double position(double time_s, ArmatureMemory memory) const;
    static std::string arrive(std::span<double> memory);

    ArmatureValues m_values;
};

} // namespace pumpwright
