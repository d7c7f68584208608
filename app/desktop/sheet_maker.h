#pragma once

#include "app/desktop/sheet/sheet_paper.h"
#include "core/study/breakdowns.h"

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>

namespace pumpwright {

/// Fills in, on another thread, what of a sheet takes long: the commissioning tests and the breakdowns of the
/// fault-finding table. The breakdowns are kept as long as they would come out the same, and can be
/// simulated before a sheet is asked for.
class SheetMaker final : public QObject {
    Q_OBJECT

public:
    explicit SheetMaker(QObject* parent);
    /// Stops what is under way.
    ~SheetMaker() override;

    /// Calls `done` on this thread with the sheet of the circuit as it was; sheets come in the order in which
    /// they were asked for.
    void make(SheetPaper paper, std::function<void(const SheetPaper&)> done);
    /// Goes on without the fault-finding table of the sheet that is being made.
    void leaveOutFaults();

    /// Simulates the breakdowns of a circuit for a sheet that may be asked for; on one core only, for nobody
    /// waits.
    void prepare(Circuit circuit);
    /// Nothing is prepared any more: the circuit has changed. A sheet that is being made goes on.
    void stopPreparing();
    bool isPreparing() const { return m_preparing; }

Q_SIGNALS:
    /// Breakdowns simulated so far for a sheet that is being made; both are the same at the end.
    void progress(int done, int total);
    void prepared();

private:
    struct Kept {
        Circuit circuit; ///< without its drawing
        BreakdownStudy study;
    };
    using Stop = std::shared_ptr<std::atomic<bool>>;

    BreakdownStudy studyOf(const Circuit& circuit, const std::atomic<bool>& stop, unsigned threads);
    void reportProgress(std::size_t done, std::size_t total);

    Stop m_stop = std::make_shared<std::atomic<bool>>(false);
    Stop m_stopPreparing = std::make_shared<std::atomic<bool>>(false);
    std::atomic<int> m_sheets = 0; ///< asked for and not made yet
    bool m_preparing = false;
    std::unique_ptr<Kept> m_kept; ///< the other thread's alone
    QThreadPool m_thread;         ///< one; last, so that it ends first
};

} // namespace pumpwright
