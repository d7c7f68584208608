#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"

#include <QObject>
#include <QString>

#include <map>
#include <memory>

namespace pumpwright {

class Document;

/// The circuit in real time, with the user's hands on its switches and foot on its pedal. It is simulated on
/// another thread while this is on; an edit of the circuit begins it anew, with the switches as they stand.
class HandOperation final : public QObject {
    Q_OBJECT

public:
    explicit HandOperation(Document& document, QObject* parent = nullptr);
    ~HandOperation() override;

    bool isOn() const { return m_worker != nullptr; }
    void begin(); ///< from the start, with switches and engine as the circuit has them before a drive
    void end();

    // What the user does; nothing happens while this is off.
    void pressPedal();
    void releasePedal();
    void moveSwitch(const PartId& part, bool on);
    void setCharging(bool charging);
    /// [N] on the pedal pad, of the presses to come.
    void setPedalForce(double force_N) { m_pedalForce_N = force_N; }

    bool isPedalPressed() const { return m_pressed; }
    bool isSwitchOn(const PartId& part) const;
    bool isCharging() const { return m_charging; }
    double pedalForce_N() const { return m_pedalForce_N; }

    /// The last seconds up to now; null before the first instant, and while this is off.
    std::shared_ptr<const Recording> recent() const { return m_seen.recent; }
    double time_s() const { return m_seen.time_s; }
    /// How fast the drive goes on, as a share of real time: below one where the machine is too slow.
    double speed() const { return m_seen.speed; }
    /// Why the drive can't go on; empty while it does.
    QString failure() const { return m_seen.failure; }
    /// What was done so far.
    const DrivePlan& plan() const { return m_seen.plan; }

Q_SIGNALS:
    void onChanged(bool on);
    void moved();    ///< time has gone on
    void operated(); ///< a switch, the pedal or the engine

private:
    class Worker;
    struct Seen {
        std::shared_ptr<const Recording> recent;
        double time_s = 0;
        double speed = 1;
        QString failure;
        DrivePlan plan;
    };

    void beginAnew(const std::map<PartId, bool>& switches, bool charging);
    void take(const Worker* from);

    Document& m_document;
    std::map<PartId, bool> m_switches; ///< every hand switch of the circuit
    bool m_pressed = false;
    bool m_charging = false;
    double m_pedalForce_N = 100;
    Seen m_seen;
    std::unique_ptr<Worker> m_worker; ///< last, so that its thread ends first
};

/// What a hand or foot can do to a part on the canvas.
enum class Control { None, Switch, Pedal };
Control controlOf(const Part& part);

} // namespace pumpwright
