#include "app/desktop/compare_actions.h"

#include "app/desktop/comparison_window.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "core/checks/rule.h"
#include "core/files/circuit_file.h"
#include "core/nets/nets.h"

#include <QAction>
#include <QFileInfo>

namespace pumpwright {

CompareActions::CompareActions(Document& document, Analysis& analysis, Dialogs& dialogs, QWidget& window)
    : QObject(&window), m_document(document), m_analysis(analysis), m_dialogs(dialogs), m_window(window),
      m_compare(new QAction(tr("Co&mpare with a file…"), this)) {
    m_compare->setToolTip(tr("See what has changed since another file, and what that does to the findings"));
    connect(m_compare, &QAction::triggered, this, &CompareActions::ask);
}

CompareActions::~CompareActions() {
    m_ends = true;
    m_thread.waitForDone();
}

void CompareActions::ask() {
    const QString path =
        m_dialogs.pathToOpen({tr("Compare with"), tr("Circuits (*.pumpwright)"), QStringLiteral("pumpwright"),
                              QFileInfo(m_document.path()).absolutePath()});
    if (!path.isEmpty()) {
        compareWith(path);
    }
}

void CompareActions::compareWith(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    Result<Circuit> before = readCircuit(path.toStdString());
    if (!before) {
        m_dialogs.showError(tr("“%1” can't be compared with.").arg(name), before.error());
        return;
    }
    const QString own =
        m_document.path().isEmpty() ? tr("Untitled") : QFileInfo(m_document.path()).fileName();
    Q_EMIT message(tr("Simulating “%1” to compare…").arg(name));
    m_analysis.whenDone(this, [this, name, own, before = std::move(*before)] {
        m_thread.start(
            [this, name, own, before, after = m_document.circuit(), afterDrive = m_analysis.drive()] {
                DriveOptions options;
                options.cancel = &m_ends;
                const DriveResult drive = simulateDrive(before, options);
                if (drive.status == DriveStatus::Cancelled) {
                    return;
                }
                const Nets nets = findNets(before);
                const Nets afterNets = findNets(after);
                const Comparison comparison =
                    comparisonOf({before, checkCircuit({before, nets, &drive})},
                                 {after, checkCircuit({after, afterNets, afterDrive.get()})});
                QMetaObject::invokeMethod(
                    this,
                    [this, name, own, comparison] {
                        Q_EMIT message({});
                        (new ComparisonWindow(name, own, comparison, &m_window))->show();
                    },
                    Qt::QueuedConnection);
            });
    });
}

} // namespace pumpwright
