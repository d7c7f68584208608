#include "app/desktop/document/hand_operation.h"

#include "app/desktop/document/document.h"
#include "core/parts/part_kind.h"
#include "core/parts/surroundings.h"
#include "core/simulate/hand_drive.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <thread>

namespace pumpwright {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds kTick{20};
/// A machine that is too slow falls behind the clock; it does not try to catch up in ever longer leaps.
constexpr double kLongestSlice_s = 0.1;
constexpr double kKept_s = 3; ///< of the recording, enough to tell what chatters
constexpr std::size_t kRecordingBytes = 8U << 20U;
constexpr double kSpeedSpan_s = 1; ///< over which the speed is measured

double secondsBetween(Clock::time_point from, Clock::time_point to) {
    return std::chrono::duration<double>(to - from).count();
}

std::map<PartId, bool> switchesAtStart(const Circuit& circuit) {
    std::map<PartId, bool> switches;
    for (const auto& [id, part] : circuit.parts) {
        if (controlOf(part) == Control::Switch) {
            switches[id] = kindOf(part).features(part).contacts.front().closedAtRest;
        }
    }
    return switches;
}

} // namespace

Control controlOf(const Part& part) {
    const Features features = kindOf(part).features(part);
    const auto isMovedBy = [&](Operator one) {
        return std::any_of(features.contacts.begin(), features.contacts.end(),
                           [&](const Contact& contact) { return contact.by == one; });
    };
    if (isMovedBy(Operator::Hand)) {
        return Control::Switch;
    }
    return features.booster || isMovedBy(Operator::Pedal) ? Control::Pedal : Control::None;
}

/// The other thread: brings the drive up to the clock, does what was asked for, and shows how it stands.
class HandOperation::Worker {
public:
    using Act = std::function<bool(HandDrive&)>;

    Worker(HandOperation& owner, Circuit circuit)
        : m_owner(owner), m_circuit(std::move(circuit)), m_thread([this] { work(); }) {}

    ~Worker() {
        {
            const std::lock_guard lock(m_mutex);
            m_cancel = true;
        }
        m_wakeUp.notify_one();
        m_thread.join();
    }

    void act(Act one) {
        {
            const std::lock_guard lock(m_mutex);
            m_acts.push_back(std::move(one));
        }
        m_wakeUp.notify_one();
    }

    Seen seen() const {
        const std::lock_guard lock(m_mutex);
        m_isPosted = false;
        return m_seen;
    }

private:
    void work() {
        DriveOptions options;
        options.cancel = &m_cancel;
        options.recordingBytes = kRecordingBytes;
        HandDrive drive(m_circuit, options);
        Clock::time_point last = Clock::now();
        bool goesOn = true;
        while (goesOn && waitForTick()) {
            const Clock::time_point now = Clock::now();
            const double slice_s = std::min(secondsBetween(last, now), kLongestSlice_s);
            last = now;
            goesOn = drive.advanceTo(drive.run().time_s() + slice_s) && doAll(drive);
            measureSpeed(drive.run().time_s());
            show(drive);
        }
    }

    bool waitForTick() {
        std::unique_lock lock(m_mutex);
        m_wakeUp.wait_for(lock, kTick, [this] { return m_cancel.load() || !m_acts.empty(); });
        return !m_cancel;
    }

    bool doAll(HandDrive& drive) {
        std::vector<Act> acts;
        {
            const std::lock_guard lock(m_mutex);
            acts.swap(m_acts);
        }
        return std::all_of(acts.begin(), acts.end(), [&](const Act& one) { return one(drive); });
    }

    void measureSpeed(double time_s) {
        const Clock::time_point now = Clock::now();
        const double passed_s = secondsBetween(m_measuredAt, now);
        if (passed_s >= kSpeedSpan_s) {
            m_speed = (time_s - m_measuredTime_s) / passed_s;
            m_measuredAt = now;
            m_measuredTime_s = time_s;
        }
    }

    void show(const HandDrive& drive) {
        const DriveRun& run = drive.run();
        Seen seen{std::make_shared<const Recording>(run.recordingSince(run.time_s() - kKept_s)), run.time_s(),
                  m_speed, QString::fromStdString(run.message()), drive.plan()};
        const std::lock_guard lock(m_mutex);
        m_seen = std::move(seen);
        if (!m_isPosted) { // else the window has not looked at the one before
            m_isPosted = true;
            QMetaObject::invokeMethod(
                &m_owner, [this, &owner = m_owner] { owner.take(this); }, Qt::QueuedConnection);
        }
    }

    HandOperation& m_owner;
    Circuit m_circuit;
    mutable std::mutex m_mutex;
    std::condition_variable m_wakeUp;
    std::vector<Act> m_acts;
    std::atomic<bool> m_cancel{false};
    Seen m_seen;
    mutable bool m_isPosted = false;
    double m_speed = 1;
    Clock::time_point m_measuredAt = Clock::now();
    double m_measuredTime_s = 0;
    std::thread m_thread; ///< last, so that it starts when the rest is there
};

HandOperation::HandOperation(Document& document, QObject* parent) : QObject(parent), m_document(document) {
    connect(&document, &Document::changed, this, [this] {
        if (isOn()) {
            const std::map<PartId, bool> switches = m_switches; // beginAnew() sets them back first
            beginAnew(switches, m_charging);
        }
    });
}

HandOperation::~HandOperation() = default;

void HandOperation::begin() {
    beginAnew({}, Surroundings(m_document.circuit().plan).charging(0));
}

void HandOperation::beginAnew(const std::map<PartId, bool>& switches, bool charging) {
    const bool wasOn = isOn();
    const Circuit& circuit = m_document.circuit();
    m_worker.reset(); // ends its thread; what it has posted is not taken any more
    m_seen = {};
    m_pressed = false;
    m_charging = Surroundings(circuit.plan).charging(0);
    m_switches = switchesAtStart(circuit);
    m_worker = std::make_unique<Worker>(*this, circuit);
    for (const auto& [part, on] : switches) {
        moveSwitch(part, on);
    }
    setCharging(charging);
    if (!wasOn) {
        Q_EMIT onChanged(true);
    }
    Q_EMIT operated();
    Q_EMIT moved();
}

void HandOperation::end() {
    if (isOn()) {
        m_worker.reset();
        m_seen = {};
        m_pressed = false;
        Q_EMIT onChanged(false);
        Q_EMIT moved();
    }
}

void HandOperation::pressPedal() {
    if (isOn() && !m_pressed) {
        m_pressed = true;
        m_worker->act([force_N = m_pedalForce_N](HandDrive& drive) { return drive.pressPedal(force_N); });
        Q_EMIT operated();
    }
}

void HandOperation::releasePedal() {
    if (isOn() && m_pressed) {
        m_pressed = false;
        m_worker->act([](HandDrive& drive) { return drive.releasePedal(); });
        Q_EMIT operated();
    }
}

void HandOperation::moveSwitch(const PartId& part, bool on) {
    const auto found = m_switches.find(part);
    if (isOn() && found != m_switches.end() && found->second != on) {
        found->second = on;
        m_worker->act([part, on](HandDrive& drive) { return drive.moveSwitch(part, on); });
        Q_EMIT operated();
    }
}

void HandOperation::setCharging(bool charging) {
    if (isOn() && charging != m_charging) {
        m_charging = charging;
        m_worker->act([charging](HandDrive& drive) { return drive.setCharging(charging); });
        Q_EMIT operated();
    }
}

bool HandOperation::isSwitchOn(const PartId& part) const {
    const auto found = m_switches.find(part);
    return found != m_switches.end() && found->second;
}

void HandOperation::take(const Worker* from) {
    if (from == m_worker.get()) { // else it is of a drive that has ended
        m_seen = from->seen();
        Q_EMIT moved();
    }
}

} // namespace pumpwright
