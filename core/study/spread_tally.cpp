#include "core/study/spread_tally.h"

#include "core/study/rank_correlation.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kFullVacuum_Pa = 110e3; ///< more than there is anywhere on the ground
constexpr double kVacuumStep_Pa = 1;
constexpr double kShareStep = 1e-5;

} // namespace

double Influence::strongest() const {
    double strongest = 0;
    for (const std::optional<double>& one : {onClosings, onAssist, onVacuum}) {
        strongest = std::max(strongest, std::abs(one.value_or(0)));
    }
    return strongest;
}

SpreadTally::SpreadTally(const Circuit& circuit, std::uint64_t seed)
    : m_seed(seed), m_values(variedValues(circuit)), m_vacuum_Pa(0, kFullVacuum_Pa, kVacuumStep_Pa),
      m_assistShare(0, 1, kShareStep), m_drawn(m_values.size()) {}

void SpreadTally::add(const SpreadCar& car) {
    if (car.status != DriveStatus::Finished) {
        ++m_counts.stopped;
        return;
    }
    ++m_counts.finished;
    m_counts.chattering += car.numbers.chatters ? 1 : 0;
    m_counts.lacking += car.numbers.lackingPresses > 0 ? 1 : 0;
    if (car.numbers.lowestVacuum_Pa) {
        m_vacuum_Pa.add(*car.numbers.lowestVacuum_Pa);
        m_assistShare.add(car.numbers.leastAssistShare);
    }
    if (m_counts.ranked < kMostRanked) {
        rank(car);
    }
}

void SpreadTally::rank(const SpreadCar& car) {
    ++m_counts.ranked;
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        m_drawn[i].push_back(drawnValue(m_values[i], m_seed, car.number));
    }
    m_results[Closings].push_back(car.numbers.mostClosings);
    m_results[Assist].push_back(car.numbers.leastAssistShare);
    m_results[Vacuum].push_back(car.numbers.lowestVacuum_Pa.value_or(0));
}

std::vector<Influence> SpreadTally::influences() const {
    const std::vector<double> closings = ranksOf(m_results[Closings]);
    const std::vector<double> assist = ranksOf(m_results[Assist]);
    const std::vector<double> vacuum = ranksOf(m_results[Vacuum]);
    std::vector<Influence> all;
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        const std::vector<double> drawn = ranksOf(m_drawn[i]);
        all.push_back({m_values[i].what, correlationOfRanks(drawn, closings),
                       correlationOfRanks(drawn, assist), correlationOfRanks(drawn, vacuum)});
    }
    std::ranges::stable_sort(all, std::ranges::greater{}, &Influence::strongest);
    return all;
}

SpreadSummary SpreadTally::summary() const {
    SpreadSummary summary = m_counts;
    summary.chatters = proportion(summary.chattering, summary.finished);
    summary.lacks = proportion(summary.lacking, summary.finished);
    summary.lowestVacuum_Pa = m_vacuum_Pa.percentiles();
    summary.leastAssistShare = m_assistShare.percentiles();
    summary.influences = influences();
    return summary;
}

bool SpreadTally::isSureTo(double halfWidth) const {
    const Proportion chatters = proportion(m_counts.chattering, m_counts.finished);
    const Proportion lacks = proportion(m_counts.lacking, m_counts.finished);
    return std::max(chatters.high - chatters.low, lacks.high - lacks.low) <= 2 * halfWidth;
}

} // namespace pumpwright
