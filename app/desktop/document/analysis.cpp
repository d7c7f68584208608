#include "app/desktop/document/analysis.h"

#include "app/desktop/document/document.h"
#include "app/desktop/document/same_results.h"
#include "core/checks/rule.h"
#include "core/nets/nets.h"

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

namespace pumpwright {

/// The other thread. It takes the newest circuit, runs it, and posts what it found back to the analysis.
class Analysis::Worker {
    struct Job {
        Circuit circuit;
        std::shared_ptr<const DriveResult> drive; ///< null where it is to be simulated
        int number;
    };

public:
    explicit Worker(Analysis& analysis) : m_analysis(analysis), m_thread([this] { work(); }) {}

    ~Worker() {
        {
            const std::lock_guard lock(m_mutex);
            m_ends = true;
            m_cancel = true;
        }
        m_wakeUp.notify_one();
        m_thread.join();
    }

    /// With a drive that is known already only the check is run.
    void run(const Circuit& circuit, std::shared_ptr<const DriveResult> drive) {
        {
            const std::lock_guard lock(m_mutex);
            m_next = Job{circuit, std::move(drive), ++m_newest};
            m_cancel = true;
        }
        m_wakeUp.notify_one();
    }

    /// To be called on the GUI thread: whether results with this number are of the circuit as it stands.
    bool isNewest(int number) {
        const std::lock_guard lock(m_mutex);
        return number == m_newest;
    }

private:
    std::optional<Job> nextJob() {
        std::unique_lock lock(m_mutex);
        m_wakeUp.wait(lock, [this] { return m_ends || m_next; });
        if (m_ends) {
            return std::nullopt;
        }
        Job job = std::move(*m_next);
        m_next.reset();
        m_cancel = false;
        return job;
    }

    void work() {
        while (const std::optional<Job> job = nextJob()) {
            const Nets nets = findNets(job->circuit);
            const auto drive = job->drive ? job->drive : newDrive(*job, nets);
            if (drive->status != DriveStatus::Cancelled) {
                postFindings(job->number, checkCircuit({job->circuit, nets, drive.get()}), true);
            }
        }
    }

    /// Posts what is known without it first.
    std::shared_ptr<const DriveResult> newDrive(const Job& job, const Nets& nets) {
        postFindings(job.number, checkCircuit({job.circuit, nets, nullptr}), false);
        DriveOptions options;
        options.cancel = &m_cancel;
        auto drive = std::make_shared<const DriveResult>(simulateDrive(job.circuit, options));
        if (drive->status != DriveStatus::Cancelled) {
            postDrive(job.number, drive);
        }
        return drive;
    }

    void postFindings(int number, std::vector<Finding> findings, bool last) {
        QMetaObject::invokeMethod(
            &m_analysis,
            [&analysis = m_analysis, number, last, findings = std::move(findings)]() mutable {
                analysis.takeFindings(number, std::move(findings), last);
            },
            Qt::QueuedConnection);
    }

    void postDrive(int number, std::shared_ptr<const DriveResult> drive) {
        QMetaObject::invokeMethod(
            &m_analysis,
            [&analysis = m_analysis, number, drive = std::move(drive)] { analysis.takeDrive(number, drive); },
            Qt::QueuedConnection);
    }

    Analysis& m_analysis;
    std::mutex m_mutex;
    std::condition_variable m_wakeUp;
    std::optional<Job> m_next;
    int m_newest = 0;
    bool m_ends = false;
    std::atomic<bool> m_cancel{false};
    std::thread m_thread; ///< last, so that it starts when the rest is there
};

Analysis::Analysis(Document& document, QObject* parent)
    : QObject(parent), m_document(document), m_worker(std::make_unique<Worker>(*this)) {
    connect(&document, &Document::changed, this, &Analysis::restart);
    restart();
}

Analysis::~Analysis() = default;

bool Analysis::isRunning() const {
    return m_running;
}

void Analysis::whenDone(QObject* context, const std::function<void()>& act) {
    if (!m_running) {
        act();
        return;
    }
    auto* waiting = new QObject(context);
    connect(this, &Analysis::runningChanged, waiting, [waiting, act](bool running) {
        if (!running) {
            waiting->deleteLater();
            act();
        }
    });
}

void Analysis::playCursorTo(double time_s, double pace) {
    if (time_s != m_cursor_s || pace != m_pace) {
        m_cursor_s = time_s;
        m_pace = pace;
        Q_EMIT cursorMoved(time_s);
    }
}

/// What only moves on the sheet is checked again, because some rules look at the drawing, but not driven
/// again.
void Analysis::restart() {
    Circuit circuit = withoutDrawing(m_document.circuit());
    const bool sameDrive = m_asked && haveSameResults(*m_asked, circuit);
    m_checkAgain = sameDrive && m_running;
    if (m_checkAgain) {
        return; // when the drive is there
    }
    m_asked = std::make_unique<Circuit>(std::move(circuit));
    m_worker->run(m_document.circuit(), sameDrive ? m_drive : nullptr);
    setRunning(true);
}

void Analysis::takeFindings(int number, std::vector<Finding> findings, bool last) {
    if (!m_worker->isNewest(number)) {
        return;
    }
    m_findings = std::move(findings);
    Q_EMIT findingsChanged();
    if (last && m_checkAgain) {
        m_checkAgain = false;
        m_worker->run(m_document.circuit(), m_drive);
    } else if (last) {
        setRunning(false);
    }
}

void Analysis::takeDrive(int number, std::shared_ptr<const DriveResult> drive) {
    if (m_worker->isNewest(number)) {
        m_drive = std::move(drive);
        Q_EMIT driveChanged();
    }
}

void Analysis::setRunning(bool running) {
    if (m_running != running) {
        m_running = running;
        Q_EMIT runningChanged(running);
    }
}

} // namespace pumpwright
