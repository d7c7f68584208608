#include "app/desktop/sheet_maker.h"

namespace pumpwright {

SheetMaker::SheetMaker(QObject* parent) : QObject(parent) {
    m_thread.setMaxThreadCount(1);
}

SheetMaker::~SheetMaker() {
    *m_stop = true;
    m_thread.clear();
    m_thread.waitForDone();
}

void SheetMaker::leaveOutFaults() {
    *m_stop = true;
}

BreakdownStudy SheetMaker::studyOf(const Circuit& circuit, const std::atomic<bool>& stop) {
    if (m_kept && m_kept->circuit == circuit) {
        return m_kept->study;
    }
    BreakdownOptions options;
    options.cancel = &stop;
    options.progress = [this](std::size_t done, std::size_t total) {
        Q_EMIT progress(static_cast<int>(done), static_cast<int>(total));
    };
    BreakdownStudy study = runBreakdowns(circuit, options);
    if (!study.isComplete()) {
        return {};
    }
    m_kept = std::make_unique<Kept>(Kept{circuit, study});
    return study;
}

void SheetMaker::make(SheetPaper paper, std::function<void(const SheetPaper&)> done) {
    m_stop = std::make_shared<std::atomic<bool>>(false);
    m_thread.start([this, stop = m_stop, done = std::move(done), paper = std::move(paper)]() mutable {
        const BreakdownStudy study = studyOf(paper.circuit, *stop);
        paper.content = withTests(std::move(paper.content), paper.circuit, study);
        QMetaObject::invokeMethod(
            this,
            [this, done = std::move(done), paper = std::move(paper)] {
                Q_EMIT progress(1, 1);
                done(paper);
            },
            Qt::QueuedConnection);
    });
}

} // namespace pumpwright
