#pragma once

#include "core/sheet/test_readings.h"
#include "core/study/breakdowns.h"

#include <string>
#include <utility>

namespace pumpwright {

/// What tells whether something is broken: what is done, where it is measured, what a sound circuit reads.
struct FaultTest {
    std::pair<std::size_t, std::size_t> order; ///< way of current, step on it: from the supply on
    std::string act;
    std::string where;
    std::string reads;

    bool isSame(const FaultTest& other) const {
        return act == other.act && where == other.where && reads == other.reads;
    }
};

/// Finds for each breakdown the place where it shows in a measurement. Refers to its inputs.
class FaultSearch {
public:
    FaultSearch(const Survey& survey, const StandingTests& tests);

    /// For the outcome of a single breakdown.
    FaultTest testFor(const BreakdownOutcome& outcome) const;

private:
    /// Two terminals between which something shows as a voltage.
    struct Spot {
        std::pair<std::size_t, std::size_t> order;
        End at;
        End against;
        bool isReturn = false; ///< on the way back, where there should be next to nothing
    };
    struct Moment {
        std::string_view act;
        double at_s;
    };

    std::optional<Spot> sourceSpot(const Breakdown& breakdown) const;
    std::optional<Spot> spotOnWay(std::size_t way, const Breakdown& breakdown) const;
    std::optional<Spot> spotOnFeed(std::size_t way, const Breakdown& breakdown) const;
    std::optional<Spot> spotOnReturn(std::size_t way, const Breakdown& breakdown) const;
    std::optional<Spot> spotOf(const Breakdown& breakdown) const;
    bool leadsThrough(const LeadStep& step, const Breakdown& breakdown) const;
    End minusOf(const LoadPath& path) const;
    double voltageAt(const Spot& spot, double at_s) const;
    Moment momentFor(const Spot& spot, bool sticks) const;

    FaultTest voltageTest(const Spot& spot, bool sticks) const;
    std::optional<FaultTest> loadTest(const Breakdown& breakdown) const;
    FaultTest wireOnBodyTest(const Breakdown& breakdown) const;
    FaultTest vacuumTest(const BreakdownOutcome& outcome) const;
    std::optional<FaultTest> valueTest(const BreakdownOutcome& outcome) const;
    FaultTest lookAt(const std::string& name) const;

    const Survey& m_survey;
    const StandingTests& m_tests;
    std::vector<const LoadPath*> m_ways; ///< the pump's, those of what switches and what warns, all others
};

} // namespace pumpwright
