#include "app/desktop/sheet_actions.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/icons.h"
#include "app/desktop/sheet_maker.h"
#include "core/files/circuit_file.h"

#include <QAction>
#include <QDate>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>
#include <QProgressDialog>
#include <QTimer>

#include <chrono>

namespace pumpwright {

SheetActions::SheetActions(Document& document, Analysis& analysis, Dialogs& dialogs, QWidget& window)
    : QObject(&window), m_document(document), m_analysis(analysis), m_dialogs(dialogs), m_window(window),
      m_preview(new QAction(ownIcon(QStringLiteral("sheet")), tr("Wiring &sheet…"), this)),
      m_print(new QAction(tr("&Print the wiring sheet…"), this)),
      m_writePdf(new QAction(tr("&Wiring sheet as PDF…"), this)), m_maker(new SheetMaker(this)) {
    m_preview->setIconText(tr("Sheet"));
    m_preview->setToolTip(tr("See the wiring sheet before it is printed"));
    m_preview->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    m_print->setShortcut(QKeySequence::Print);
    connect(m_preview, &QAction::triggered, this,
            [this] { withPaper([this](const SheetPaper& paper) { openPreview(paper); }); });
    connect(m_print, &QAction::triggered, this,
            [this] { withPaper([this](const SheetPaper& paper) { openPrintDialog(paper); }); });
    connect(m_writePdf, &QAction::triggered, this, &SheetActions::askAndWritePdf);
    connect(m_maker, &SheetMaker::progress, this, &SheetActions::showProgress);
    prepareWhileIdle();
}

/// The breakdowns of the fault-finding table take seconds: they are simulated while the builder looks at the
/// circuit, so that the sheet is there when it is asked for.
void SheetActions::prepareWhileIdle() {
    constexpr std::chrono::seconds kIdle{4};
    auto* idle = new QTimer(this);
    idle->setSingleShot(true);
    idle->setInterval(kIdle);
    connect(&m_analysis, &Analysis::runningChanged, this, [this, idle](bool running) {
        if (running) {
            idle->stop();
            m_maker->stopPreparing();
        } else {
            idle->start();
        }
    });
    connect(idle, &QTimer::timeout, this, [this] {
        if (!m_document.circuit().parts.empty()) {
            m_maker->prepare(m_document.circuit());
        }
    });
}

QString SheetActions::documentName() const {
    return m_document.path().isEmpty() ? tr("Untitled") : QFileInfo(m_document.path()).completeBaseName();
}

void SheetActions::withPaper(const std::function<void(const SheetPaper&)>& act) {
    if (m_analysis.isRunning()) {
        Q_EMIT message(tr("Waiting for the drive to be simulated…"));
    }
    m_analysis.whenDone(this, [this, act] {
        const Circuit& circuit = m_document.circuit();
        const QString path = m_document.path();
        Q_EMIT message(tr("Simulating tests and breakdowns for the sheet…"));
        m_maker->make({circuit,
                       wiringSheet(circuit, m_analysis.findings(), circuitCheckSum(circuit), m_prices),
                       m_analysis.drive(), path.isEmpty() ? QString() : QFileInfo(path).fileName(),
                       QDate::currentDate().toString(Qt::ISODate), m_size},
                      act);
    });
}

/// A window beside the work, not in its way: it comes where the breakdowns take longer than a moment.
void SheetActions::showProgress(int done, int total) {
    if (m_progress == nullptr) {
        m_progress = new QProgressDialog(
            tr("Letting one thing after the other fail, for the fault-finding table of the sheet…"),
            tr("Go on without that table"), 0, total, &m_window);
        m_progress->setWindowTitle(tr("Wiring sheet"));
        m_progress->setMinimumDuration(800);
        m_progress->setWindowModality(Qt::NonModal);
        connect(m_progress, &QProgressDialog::canceled, m_maker, &SheetMaker::leaveOutFaults);
    }
    if (done < total) {
        m_progress->setMaximum(total);
        m_progress->setValue(done);
    } else {
        m_progress->deleteLater();
        m_progress = nullptr;
    }
}

void SheetActions::openPreview(const SheetPaper& paper) {
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    prepareSheetPrinter(*printer, m_size);
    auto* preview = new QPrintPreviewDialog(printer.get(), &m_window);
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->setWindowTitle(tr("Wiring sheet of %1").arg(documentName()));
    preview->resize(m_window.size() * 0.9);
    // The printer has to outlive the preview, and goes with it.
    connect(preview, &QPrintPreviewDialog::paintRequested, preview, [this, printer, paper](QPrinter* target) {
        if (const auto printed = printSheet(*target, paper); !printed) {
            m_dialogs.showError(tr("The wiring sheet can't be shown."), printed.error());
        }
    });
    preview->open();
}

void SheetActions::openPrintDialog(const SheetPaper& paper) {
    QPrinter printer(QPrinter::HighResolution);
    prepareSheetPrinter(printer, m_size);
    printer.setDocName(tr("Wiring sheet of %1").arg(documentName()));
    QPrintDialog dialog(&printer, &m_window);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    if (const auto printed = printSheet(printer, paper); !printed) {
        m_dialogs.showError(tr("The wiring sheet was not printed."), printed.error());
    }
}

void SheetActions::report(const Result<void>& written, const QString& path) {
    const QString name = QFileInfo(path).fileName();
    if (written) {
        Q_EMIT message(tr("“%1” is written.").arg(name));
    } else {
        m_dialogs.showError(tr("“%1” is not written.").arg(name), written.error());
    }
}

void SheetActions::askAndWritePdf() {
    const QString path =
        m_dialogs.pathToSave({tr("Write the wiring sheet"), tr("PDF (*.pdf)"), QStringLiteral("pdf"),
                              documentName() + QStringLiteral(".pdf")});
    if (!path.isEmpty()) {
        withPaper([this, path](const SheetPaper& paper) { report(writeSheetPdf(path, paper), path); });
    }
}

} // namespace pumpwright
