#include "app/desktop/sheet_maker.h"

#include "app/desktop/document/same_results.h"

namespace pumpwright {

SheetMaker::SheetMaker(QObject* parent) : QObject(parent) {
    m_thread.setMaxThreadCount(1);
}

SheetMaker::~SheetMaker() {
    *m_stop = true;
    *m_stopPreparing = true;
    m_thread.clear();
    m_thread.waitForDone();
}

void SheetMaker::leaveOutFaults() {
    *m_stop = true;
    stopPreparing();
}

void SheetMaker::reportProgress(std::size_t done, std::size_t total) {
    if (m_sheets > 0) {
        Q_EMIT progress(static_cast<int>(done), static_cast<int>(total));
    }
}

BreakdownStudy SheetMaker::studyOf(const Circuit& circuit, const std::atomic<bool>& stop, unsigned threads) {
    Circuit bare = withoutDrawing(circuit);
    if (m_kept && haveSameResults(m_kept->circuit, bare)) {
        return m_kept->study;
    }
    BreakdownOptions options;
    options.cancel = &stop;
    options.threads = threads;
    options.progress = [this](std::size_t done, std::size_t total) { reportProgress(done, total); };
    BreakdownStudy study = runBreakdowns(circuit, options);
    if (!study.isComplete()) {
        return {};
    }
    m_kept = std::make_unique<Kept>(Kept{std::move(bare), study});
    return study;
}

void SheetMaker::prepare(Circuit circuit) {
    stopPreparing();
    m_stopPreparing = std::make_shared<std::atomic<bool>>(false);
    m_preparing = true;
    m_thread.start([this, stop = m_stopPreparing, circuit = std::move(circuit)] {
        studyOf(circuit, *stop, 1);
        QMetaObject::invokeMethod(
            this,
            [this, stop] {
                if (!*stop) {
                    m_preparing = false;
                    Q_EMIT prepared();
                }
            },
            Qt::QueuedConnection);
    });
}

void SheetMaker::stopPreparing() {
    *m_stopPreparing = true;
    m_preparing = false;
}

void SheetMaker::make(SheetPaper paper, std::function<void(const SheetPaper&)> done) {
    m_stop = std::make_shared<std::atomic<bool>>(false);
    ++m_sheets;
    m_thread.start([this, stop = m_stop, done = std::move(done), paper = std::move(paper)]() mutable {
        constexpr unsigned kAllCores = 0;
        const BreakdownStudy study = studyOf(paper.circuit, *stop, kAllCores);
        paper.content = withTests(std::move(paper.content), paper.circuit, study);
        QMetaObject::invokeMethod(
            this,
            [this, done = std::move(done), paper = std::move(paper)] {
                --m_sheets;
                Q_EMIT progress(1, 1);
                done(paper);
            },
            Qt::QueuedConnection);
    });
}

} // namespace pumpwright
