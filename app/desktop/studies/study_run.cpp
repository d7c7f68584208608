#include "app/desktop/studies/study_run.h"

#include <QElapsedTimer>

namespace pumpwright {
namespace {

constexpr qint64 kShowEvery_ms = 500;

} // namespace

StudyRun::StudyRun(QObject* parent) : QObject(parent) {
    m_thread.setMaxThreadCount(1);
}

StudyRun::~StudyRun() {
    cancel();
    m_thread.waitForDone();
}

void StudyRun::start(Study study) {
    if (isRunning()) {
        return;
    }
    m_cancel = std::make_shared<std::atomic<bool>>(false);
    Q_EMIT started();
    m_thread.start([this, cancel = m_cancel, study = std::move(study)] {
        StudyOptions options;
        options.cancel = cancel.get();
        options.progress = [this](std::size_t done, std::size_t total) {
            QMetaObject::invokeMethod(
                this,
                [this, done, total] { Q_EMIT progress(static_cast<int>(done), static_cast<int>(total)); },
                Qt::QueuedConnection);
        };
        QElapsedTimer sinceShown;
        sinceShown.start();
        const Show show = [&](const std::function<Tables()>& soFar) {
            if (sinceShown.elapsed() >= kShowEvery_ms) {
                QMetaObject::invokeMethod(
                    this, [this, tables = soFar()] { Q_EMIT partial(tables); }, Qt::QueuedConnection);
                sinceShown.restart();
            }
        };
        std::vector<SheetTable> tables = study(options, show);
        QMetaObject::invokeMethod(
            this, [this, tables = std::move(tables)] { takeResult(tables); }, Qt::QueuedConnection);
    });
}

void StudyRun::cancel() {
    if (m_cancel) {
        *m_cancel = true;
    }
}

void StudyRun::takeResult(const std::vector<SheetTable>& tables) {
    const bool whole = !*m_cancel;
    m_cancel.reset();
    Q_EMIT finished(tables, whole);
}

} // namespace pumpwright
