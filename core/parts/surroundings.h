#pragma once

#include "core/circuit/drive_plan.h"

#include <map>
#include <vector>

namespace pumpwright {

/// What the drive plan does to every part, as functions of time.
class Surroundings {
public:
    explicit Surroundings(DrivePlan plan);

    /// Follows another plan from now on: one that somebody at the controls has just added to. Laws that were
    /// built for the plan before see the new one; ambient temperature and initial vacuum stay.
    void followPlan(DrivePlan plan);

    const DrivePlan& plan() const { return m_plan; }
    double ambientTemperature_K() const { return m_plan.ambient_K; }
    /// [Pa] absolute, from the altitude profile after ISO 2533.
    double ambientPressure_Pa(double time_s) const;
    /// [N] on the pedal pad; overlapping presses count with the larger force.
    double pedalForce_N(double time_s) const;
    /// Whether engine or traction converter feeds the 12 V system.
    bool charging(double time_s) const;
    /// Whether the driver has a hand switch on; `atStart` is how it stood before its first move.
    bool switchOn(const PartId& part, bool atStart, double time_s) const;
    /// The next time [s] after `now_s` at which one of the functions above has a kink or jump; infinity if
    /// none.
    double nextKink_s(double now_s) const;

private:
    DrivePlan m_plan;
    std::vector<Press> m_presses; ///< in the order of their beginning
    double m_longestPress_s = 0;
    std::map<PartId, std::vector<SwitchMove>> m_moves; ///< of each hand switch, in order of time
    std::vector<double> m_kinks;
    double m_firstPressure_Pa = 0; ///< ambient at the start; throughout, where the altitude stays
};

} // namespace pumpwright
