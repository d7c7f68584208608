#pragma once

#include "core/checks/finding.h"
#include "core/simulate/drive.h"

#include <QObject>

#include <functional>
#include <memory>
#include <vector>

namespace pumpwright {

class Document;

/// Findings and drive of the circuit as it stands, computed on another thread after each edit. A run that an
/// edit has overtaken is cancelled and its result never shown.
class Analysis final : public QObject {
    Q_OBJECT

public:
    explicit Analysis(Document& document, QObject* parent = nullptr);
    ~Analysis() override;

    /// Findings of the latest finished check; those of the rules that need no drive come first, the rest
    /// follow.
    const std::vector<Finding>& findings() const { return m_findings; }
    /// The latest finished drive, or null before the first.
    std::shared_ptr<const DriveResult> drive() const { return m_drive; }
    bool isRunning() const;
    /// Calls once findings and drive are of the circuit as it stands: at once or later, unless `context` is
    /// gone by then.
    void whenDone(QObject* context, const std::function<void()>& act);

    /// The instant of the drive that canvas and chart show.
    double cursor_s() const { return m_cursor_s; }
    /// Seconds of the drive that pass in a second on the screen; 0 while the cursor stands.
    double pace() const { return m_pace; }
    void setCursor(double time_s) { playCursorTo(time_s, 0); }
    void playCursorTo(double time_s, double pace);

Q_SIGNALS:
    void findingsChanged();
    void driveChanged();
    void runningChanged(bool running);
    void cursorMoved(double time_s);

private:
    class Worker;

    void restart();
    void takeFindings(int number, std::vector<Finding> findings, bool last);
    void takeDrive(int number, std::shared_ptr<const DriveResult> drive);
    void setRunning(bool running);

    Document& m_document;
    std::unique_ptr<Circuit> m_asked; ///< the circuit of the newest run
    std::vector<Finding> m_findings;
    std::shared_ptr<const DriveResult> m_drive;
    double m_cursor_s = 0;
    double m_pace = 0;
    bool m_running = false;
    bool m_checkAgain = false;        ///< parts have moved on the sheet since the run began
    std::unique_ptr<Worker> m_worker; ///< last, so that its thread ends first
};

} // namespace pumpwright
