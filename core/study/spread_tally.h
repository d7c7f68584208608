#pragma once

#include "core/simulate/drive.h"
#include "core/study/drive_numbers.h"
#include "core/study/proportion.h"
#include "core/study/tally.h"
#include "core/study/varied_circuit.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace pumpwright {

/// One of many cars built after the same circuit, each with parts that lie differently within their
/// tolerances.
struct SpreadCar {
    std::uint64_t number = 0;
    DriveStatus status = DriveStatus::Finished;
    DriveNumbers numbers;
    friend bool operator==(const SpreadCar&, const SpreadCar&) = default;
};

/// How far results follow one tolerance, as rank correlations; nothing where a result is the same in all
/// cars.
struct Influence {
    Adjustable what;
    std::optional<double> onClosings;
    std::optional<double> onAssist; ///< of the worst press
    std::optional<double> onVacuum; ///< lowest in a press

    double strongest() const; ///< 0…1
};

/// What the cars come to. Cars whose drive could not be finished count in `stopped` alone.
struct SpreadSummary {
    std::size_t finished = 0;
    std::size_t stopped = 0;
    std::size_t chattering = 0;
    std::size_t lacking = 0; ///< with a press without full assist
    Proportion chatters;
    Proportion lacks;
    std::optional<Percentiles> lowestVacuum_Pa; ///< nothing without a press
    std::optional<Percentiles> leastAssistShare;
    std::size_t ranked = 0;            ///< cars that the influences are taken from
    std::vector<Influence> influences; ///< the strongest first
    bool endedSure = false;            ///< ended early, because the shares were known well enough
};

/// The influences are taken from the first finished cars up to this number: enough to tell a correlation of
/// 0.03 from chance, and memory does not grow further.
inline constexpr std::size_t kMostRanked = 5000;

/// Adds up cars. The same cars in the same order give the same summary, wherever they were driven.
class SpreadTally {
public:
    SpreadTally(const Circuit& circuit, std::uint64_t seed);

    void add(const SpreadCar& car);
    SpreadSummary summary() const;
    /// Whether the intervals of both shares are no wider than twice this.
    bool isSureTo(double halfWidth) const;

private:
    enum Result { Closings, Assist, Vacuum, ResultCount };

    void rank(const SpreadCar& car);
    std::vector<Influence> influences() const;

    std::uint64_t m_seed;
    std::vector<VariedValue> m_values;
    SpreadSummary m_counts;
    Tally m_vacuum_Pa;
    Tally m_assistShare;
    std::vector<std::vector<double>> m_drawn; ///< for each value, of each ranked car
    std::array<std::vector<double>, ResultCount> m_results;
};

} // namespace pumpwright
