#pragma once

#include <cstddef>
#include <span>
#include <string>

namespace pumpwright {

/// What moves a relay's armature. Pull-in must lie above drop-out.
struct ArmatureValues {
    double pullIn_A;
    double dropOut_A;
    double operate_s;    ///< travel from rest until the make contact closes
    double release_s;    ///< travel back until it opens
    double bounce_s = 0; ///< that the make contact bounces after it has closed; 0: it does not
};

/// Where the armature and its contacts are: a view of the memory of the law that it belongs to.
///
/// The break contact opens as the armature leaves its rest and closes as it comes back; the make contact
/// closes on arrival and opens as the armature is back at rest. So it always breaks before it makes. On
/// arrival it bounces: it stays closed on the whole, yet does not conduct while it is off the other contact.
struct ArmatureMemory {
    static constexpr std::size_t kSize = 6;
    enum State { Out, MovingIn, In, MovingOut };

    std::span<const double> values;
    State state() const { return static_cast<State>(static_cast<int>(values[0])); }
    double due_s() const { return values[1]; }
    bool makeClosed() const { return values[2] > 0; }
    bool makeConducts() const { return makeClosed() && bounces() % 2 == 0; }
    bool breakClosed() const { return values[3] > 0; }
    /// Times that it has left the other contact and come back to it, together; 0 where it does not bounce.
    int bounces() const { return static_cast<int>(values[4]); }
    double bounceDue_s() const { return values[5]; }
    bool moving() const { return state() == MovingIn || state() == MovingOut; }
};

/// Events of an armature: 0 the current pulls it in, 1 the current lets it go, 2 it arrives, 3 its make
/// contact leaves the other or comes back in a bounce. A change of the current's mind on the way turns it
/// back, and the way back takes the share of the travel already made.
class Armature {
public:
    static constexpr std::size_t kEvents = 4;

    explicit Armature(const ArmatureValues& values);

    static std::span<const double> atStart();
    double eventValue(std::size_t event, double current_A, double time_s, ArmatureMemory memory) const;
    std::string happen(std::size_t event, double time_s, std::span<double> memory) const;
    /// When a moving armature arrives or a bouncing contact moves; infinity for one at rest.
    static double due_s(ArmatureMemory memory);

private:
    /// How much of the way from out to in lies behind it, 0…1.
    double position(double time_s, ArmatureMemory memory) const;
    std::string arrive(double time_s, std::span<double> memory) const;
    void bounce(double time_s, std::span<double> memory) const;

    ArmatureValues m_values;
};

} // namespace pumpwright
