#pragma once

#include "core/sheet/wiring_sheet.h"
#include "core/study/study_run.h"

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>
#include <vector>

namespace pumpwright {

/// Drives a study on another thread and reports on the thread of the window. One at a time.
class StudyRun final : public QObject {
    Q_OBJECT

public:
    using Tables = std::vector<SheetTable>;
    /// Shows what it has come to so far; may be called often, and asks for the tables when it is time for
    /// them.
    using Show = std::function<void(const std::function<Tables()>& soFar)>;
    /// What a study comes to; runs on the other thread.
    using Study = std::function<Tables(const StudyOptions&, const Show&)>;

    explicit StudyRun(QObject* parent = nullptr);
    ~StudyRun() override;

    bool isRunning() const { return m_cancel != nullptr; }
    void start(Study study);
    /// The study ends soon, with what it has come to so far.
    void cancel();

Q_SIGNALS:
    void started();
    void progress(int done, int total);
    void partial(const std::vector<pumpwright::SheetTable>& tables);
    void finished(const std::vector<pumpwright::SheetTable>& tables, bool whole);

private:
    void takeResult(const std::vector<SheetTable>& tables);

    std::shared_ptr<std::atomic<bool>> m_cancel; ///< null while nothing runs
    QThreadPool m_thread;                        ///< last, so that it ends first
};

} // namespace pumpwright
