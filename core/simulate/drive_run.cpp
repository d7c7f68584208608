#include "core/simulate/drive_run.h"

#include "core/units/quantity_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kFirstStep_s = 1e-6;
constexpr double kLongestFirstStep_s = 1e-2;
/// Before the drive the vehicle stood: the little capacitances of open contacts are charged.
constexpr double kStood_s = 3e-7;
constexpr double kSameInstant_s = 1e-10; ///< times closer than this are one
constexpr double kLongestStep_s = 60;
constexpr double kSkipped_s = 1e-9;    ///< what passes at once where steps get too fine for the clock
constexpr int kMostSkips = 3;          ///< without a step between them
constexpr double kClockIsFine_s = 100; ///< until then the clock tells steps apart that no circuit needs
constexpr int kMostEventsAtOnce = 200;
constexpr double kCrowdSpan_s = 1e-3;
constexpr int kMostEventsInCrowd = 5000;
constexpr long kMostSteps = 20'000'000;
constexpr long kStepsBetweenReports = 64;
/// How long the vehicle stands before a drive that starts steadily: long against booster, wires and
/// filaments.
constexpr double kStanding_s = 600;
/// Of all gas held: what a step may make of nothing. Newton's iteration measures by what single unknowns
/// move, and stops too early where a valve bends the flow.
constexpr double kMostOffShare = 2e-8;
constexpr int kMostRefinements = 8;
constexpr int kMostShortenings = 8;
/// A step this short need not be repeated to end on its event.
constexpr double kShortestRepeated_s = 1e-9;

/// The plan's first instant, for ever before it.
DrivePlan standingPlan(const DrivePlan& plan) {
    DrivePlan standing = plan;
    const bool charging = Surroundings(plan).charging(0);
    standing.presses.clear();
    std::erase_if(standing.switchMoves, [](const SwitchMove& move) { return move.at_s > 0; });
    for (SwitchMove& move : standing.switchMoves) {
        move.at_s = -kStanding_s;
    }
    standing.charging.clear();
    if (charging) {
        standing.charging.push_back({-kStanding_s, kStanding_s, {}});
    }
    standing.altitude.resize(std::min<std::size_t>(standing.altitude.size(), 1));
    return standing;
}

} // namespace

DriveRun::DriveRun(const Circuit& circuit, const DriveOptions& options)
    : m_options(options), m_plan(circuit.plan),
      m_system(circuit, options.relativeTolerance / DriveOptions().relativeTolerance),
      m_stepper(m_system, options.relativeTolerance), m_events(m_system),
      m_recorder(m_system.channels(), options.recordingBytes), m_books(m_system, options.balances),
      m_x(m_system.start().begin(), m_system.start().end()), m_values(m_recorder.channelCount()),
      m_before(m_x.size()), m_after(m_x.size()), m_lastStep_s(kFirstStep_s) {}

bool DriveRun::begin() {
    m_begun = true;
    if (m_plan.startsSteady && !stand()) {
        return false;
    }
    if (!settle(kStood_s) || !restart()) {
        return false;
    }
    m_books.open(m_time_s, m_x);
    return true;
}

/// Lets everything come to what it comes to under the plan's first instant.
bool DriveRun::stand() {
    m_time_s = -kStanding_s;
    m_system.followPlan(standingPlan(m_plan));
    if (!settle(kStood_s) || !restart()) {
        return false;
    }
    m_books.open(m_time_s, m_x);
    while (m_result.status == DriveStatus::Finished && m_time_s < 0 && advance(0)) {
        report();
    }
    m_system.followPlan(m_plan);
    return m_result.status == DriveStatus::Finished;
}

bool DriveRun::advanceTo(double time_s) {
    if (!m_begun && !begin()) {
        return false;
    }
    while (m_result.status == DriveStatus::Finished && m_time_s < time_s && advance(time_s)) {
        report();
    }
    return m_result.status == DriveStatus::Finished;
}

bool DriveRun::followPlan(const DrivePlan& plan) {
    m_plan = plan;
    m_system.followPlan(plan);
    return m_result.status == DriveStatus::Finished && (!m_begun || restart());
}

DriveResult DriveRun::finish() {
    m_time_s = std::max(m_time_s, 0.0);
    recordNow(false); // a run that stopped at its start has one sample too
    m_result.recording = m_recorder.finish(m_time_s);
    if (m_options.balances) {
        m_result.balances = m_books.balances();
    }
    const RadauStepper::Counts counts = m_stepper.counts();
    m_result.statistics = {counts.steps, counts.rejected, counts.factorisations, counts.newtonIterations,
                           m_eventCount, m_system.size()};
    return std::move(m_result);
}

/// Makes one step and deals with what happens in it. False where the run ends early.
bool DriveRun::advance(double latest_s) {
    const double due_s = m_system.nextDue_s(m_time_s);
    const double to_s = std::min({due_s, latest_s, m_time_s + kLongestStep_s});
    if (to_s - m_time_s < kSameInstant_s) {
        m_time_s = to_s;
        return restart();
    }
    if (!makeStep(to_s)) {
        return false;
    }
    const StepPolynomial& step = m_stepper.polynomial();
    std::optional<double> event_s = m_events.firstWithin(step, m_x.size());
    const double lateness_s = step.end_s - event_s.value_or(step.end_s);
    const double before_s = step.end_s - lateness_s - step.begin_s;
    if (lateness_s > 0 && before_s > kShortestRepeated_s) {
        if (!repeatStep(*event_s)) {
            return false;
        }
        event_s = m_events.firstWithin(step, m_x.size());
    }
    const double reached_s = event_s.value_or(step.end_s);
    if (reached_s < step.end_s) {
        m_books.weigh(step, reached_s);
    }
    m_books.enter();
    m_lastStep_s = std::clamp(step.end_s - step.begin_s, kFirstStep_s, kLongestFirstStep_s);
    record(step.begin_s, reached_s);
    m_time_s = reached_s;
    step.evaluate(reached_s, m_x);
    recordNow(false);
    return event_s || m_time_s >= due_s ? restart() : true;
}

/// A step that conserves gas and charge: iterated further where it does not, and made anew and shorter where
/// that is of no use.
bool DriveRun::makeStep(double latest_s) {
    const StepPolynomial& step = m_stepper.polynomial();
    for (int shortening = 0;; ++shortening) {
        if (!tryStep(latest_s)) {
            return false;
        }
        const double quarter_s = (step.end_s - step.begin_s) / 4;
        if (m_books.offShare() <= kMostOffShare || quarter_s < kShortestRepeated_s ||
            shortening == kMostShortenings) {
            return true;
        }
        step.evaluate(step.begin_s, m_x);
        latest_s = step.begin_s + quarter_s;
        m_stepper.start(step.begin_s, m_x, quarter_s);
    }
}

bool DriveRun::tryStep(double latest_s) {
    for (int skips = 0; m_stepper.step(latest_s) == RadauStepper::Outcome::TooFine; ++skips) {
        if (skips == kMostSkips || m_time_s < kClockIsFine_s) {
            const auto& owner = m_system.ownerOf(m_stepper.culprit());
            return stop(
                fmt::format("the step would have to be shorter than time can be told apart, because of {}",
                            owner.name),
                owner.id);
        }
        if (!skipTooFine()) {
            return false;
        }
    }
    const StepPolynomial& step = m_stepper.polynomial();
    m_books.weigh(step, step.end_s);
    for (int round = 0; round < kMostRefinements && m_books.offShare() > kMostOffShare; ++round) {
        m_stepper.refine();
        m_books.weigh(step, step.end_s);
    }
    return true;
}

/// Late in a long drive the picoseconds in which a contact charges its wires are shorter than time can be
/// told apart: they pass at once, as those of an event do.
bool DriveRun::skipTooFine() {
    std::copy(m_stepper.x().begin(), m_stepper.x().end(), m_x.begin());
    if (!settle(kSkipped_s)) {
        return false;
    }
    m_stepper.start(m_time_s, m_x, kSkipped_s);
    return true;
}

/// Makes the last step anew so that it ends on an event, where the method is of order 5 and not of 3 as
/// between its ends.
bool DriveRun::repeatStep(double to_s) {
    const double begin_s = m_stepper.polynomial().begin_s;
    m_stepper.polynomial().evaluate(begin_s, m_x);
    m_stepper.start(begin_s, m_x, to_s - begin_s);
    return makeStep(to_s);
}

bool DriveRun::settle(double within_s) {
    if (m_stepper.settle(m_time_s, m_x, within_s)) {
        return true;
    }
    const auto& owner = m_system.ownerOf(m_stepper.culprit());
    return stop(fmt::format("no state of the circuit fits the equations, nearest to blame is {}", owner.name),
                owner.id);
}

/// Deals with everything that is due at this instant and starts the stepper anew: with a fine step where
/// currents or flows jump, else with the one before, for a pedal that starts to move or an armature that
/// starts to travel.
bool DriveRun::restart() {
    double firstStep_s = m_lastStep_s;
    for (int round = 0; round < kMostEventsAtOnce; ++round) {
        if (!settle(kSameInstant_s)) {
            return false;
        }
        recordNow(true);
        const std::vector<EventFinder::Due> due = m_events.dueAt(m_time_s, m_x);
        if (due.empty()) {
            m_stepper.start(m_time_s, m_x, firstStep_s);
            return true;
        }
        m_system.rightSide(m_time_s, m_x, m_before);
        if (!happenAll(due)) {
            return false;
        }
        m_system.rightSide(m_time_s, m_x, m_after);
        if (m_before != m_after) {
            firstStep_s = kFirstStep_s;
        }
    }
    const PlacedLaw& law = m_system.laws()[m_events.dueAt(m_time_s, m_x).front().law];
    return stop(fmt::format("{} switches to and fro without end", law.reference), law.id);
}

bool DriveRun::happenAll(std::span<const EventFinder::Due> due) {
    for (const EventFinder::Due& event : due) {
        const PlacedLaw& placed = m_system.laws()[event.law];
        const Point at = m_system.pointFor(placed, m_time_s, m_x);
        if (placed.law->eventValue(event.event, at) < 0) {
            continue; // an event before it in the same instant has settled it
        }
        std::string what = placed.law->happen(event.event, at, m_system.memoryOf(placed));
        ++m_eventCount;
        if (!what.empty() && m_time_s >= 0) {
            m_recorder.addEvent({m_time_s, placed.subject, placed.id, std::move(what)});
        }
        if (m_time_s - m_crowdBegin_s > kCrowdSpan_s) {
            m_crowdBegin_s = m_time_s;
            m_crowd = 0;
        }
        if (++m_crowd > kMostEventsInCrowd) {
            return stop(fmt::format("{} switches more than {} times within a millisecond", placed.reference,
                                    kMostEventsInCrowd),
                        placed.id);
        }
    }
    return true;
}

void DriveRun::record(double from_s, double to_s) {
    if (from_s < 0) {
        return;
    }
    m_between.resize(m_x.size());
    for (const double share : {0.25, 0.5, 0.75}) {
        const double time_s = from_s + share * (to_s - from_s);
        m_stepper.polynomial().evaluate(time_s, m_between);
        m_system.channelValues(time_s, m_between, m_values);
        m_recorder.add(time_s, m_values);
    }
}

void DriveRun::recordNow(bool jump) {
    if (m_time_s < 0) {
        return;
    }
    m_system.channelValues(m_time_s, m_x, m_values);
    if (jump) {
        m_recorder.jump(m_time_s, m_values);
    } else {
        m_recorder.add(m_time_s, m_values);
    }
}

void DriveRun::report() {
    const RadauStepper::Counts counts = m_stepper.counts();
    if (m_options.cancel != nullptr && m_options.cancel->load(std::memory_order_relaxed)) {
        m_result.status = DriveStatus::Cancelled;
    } else if (counts.steps > kMostSteps) {
        stop("it takes too many steps", {});
    } else if (m_options.progress && counts.steps % kStepsBetweenReports == 0) {
        m_options.progress(std::max(0.0, m_time_s / m_plan.duration_s));
    }
}

bool DriveRun::stop(const std::string& why, const std::string& id) {
    m_result.status = DriveStatus::Stopped;
    m_result.message = fmt::format("The drive cannot be simulated beyond {}: {}.",
                                   formatQuantity(std::max(m_time_s, 0.0), QuantityKind::Time), why);
    if (!id.empty()) {
        m_result.suspects.push_back(id);
    }
    return false;
}

} // namespace pumpwright
