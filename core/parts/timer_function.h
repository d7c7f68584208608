#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace pumpwright {

/// Functions of time relays in the words of IEC 61812-1.
enum class TimerFunction {
    DelayOnRelease, ///< output with the trigger, and for the set time after the trigger's end
    SingleShot,     ///< output for the set time from the trigger's begin
    DelayOnMake,    ///< output once the trigger has lasted for the set time, until it ends
};

/// From the ids of the timer's choice.
TimerFunction timerFunction(std::string_view id);

/// A view of what a time relay remembers, part of its law's memory.
struct TimerMemory {
    static constexpr std::size_t kSize = 6;

    std::span<const double> values;
    bool supplied() const { return values[0] > 0; }
    bool triggered() const { return values[1] > 0; }
    bool running() const { return values[2] > 0; } ///< the delay counts
    double delayDue_s() const { return values[3]; }
    bool contactClosed() const { return values[4] > 0; }
    double contactDue_s() const { return values[5]; } ///< infinity while the contact rests
    /// Whether the relay inside is to be closed; its contact follows after the operate time.
    bool outputOn() const;
};

struct TimerValues {
    TimerFunction function;
    bool retriggerable;
    double delay_s;
    double operate_s; ///< of the relay inside, both ways
    double triggerOn_V;
    double triggerOff_V;
    double minimumSupply_V;
};

/// The logic of a time relay: supply, trigger, delay, and the relay inside.
///
/// What a new trigger does while the delay runs: retriggerable, it starts the time anew (delay on release: it
/// keeps the output on and the delay begins again with its end). Not retriggerable, it is ignored altogether
/// and must be given again after the delay. A trigger that is there when the supply comes counts as a new
/// one.
class TimerLogic {
public:
    enum Event { SupplyComes, SupplyGoes, TriggerBegins, TriggerEnds, DelayEnds, ContactMoves, kEvents };

    explicit TimerLogic(const TimerValues& values);

    static std::span<const double> atStart();
    double eventValue(std::size_t event, double supply_V, double trigger_V, double time_s,
                      TimerMemory memory) const;
    std::string happen(std::size_t event, double time_s, std::span<double> memory) const;
    static double nextDue_s(TimerMemory memory);

private:
    void beginTrigger(double time_s, std::span<double> memory) const;
    void endTrigger(double time_s, std::span<double> memory) const;
    void startDelay(double time_s, std::span<double> memory) const;
    void setOutput(bool on, double time_s, std::span<double> memory) const;

    TimerValues m_values;
};

} // namespace pumpwright
