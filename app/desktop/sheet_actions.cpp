#include "app/desktop/sheet_actions.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/icons.h"
#include "app/desktop/sheet/circuit_export.h"
#include "app/desktop/sheet/drive_figure.h"
#include "core/files/circuit_file.h"

#include <QAction>
#include <QDate>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>

namespace pumpwright {

SheetActions::SheetActions(Document& document, Analysis& analysis, Dialogs& dialogs, QWidget& window)
    : QObject(&window), m_document(document), m_analysis(analysis), m_dialogs(dialogs), m_window(window),
      m_preview(new QAction(ownIcon(QStringLiteral("sheet")), tr("Wiring &sheet…"), this)),
      m_print(new QAction(tr("&Print the wiring sheet…"), this)),
      m_writePdf(new QAction(tr("Wiring sheet as P&DF…"), this)),
      m_writeChart(new QAction(tr("Drive chart as picture…"), this)),
      m_writeDrawing(new QAction(tr("Circuit as drawing…"), this)) {
    m_preview->setIconText(tr("Sheet"));
    m_preview->setToolTip(tr("See the wiring sheet before it is printed"));
    m_preview->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
    m_print->setShortcut(QKeySequence::Print);
    connect(m_preview, &QAction::triggered, this,
            [this] { withPaper([this](const SheetPaper& paper) { openPreview(paper); }); });
    connect(m_print, &QAction::triggered, this,
            [this] { withPaper([this](const SheetPaper& paper) { openPrintDialog(paper); }); });
    connect(m_writePdf, &QAction::triggered, this, &SheetActions::askAndWritePdf);
    connect(m_writeChart, &QAction::triggered, this,
            [this] { whenAnalysed([this] { askAndWriteChart(); }); });
    connect(m_writeDrawing, &QAction::triggered, this, &SheetActions::askAndWriteDrawing);
}

void SheetActions::whenAnalysed(std::function<void()> act) {
    if (!m_analysis.isRunning()) {
        act();
        return;
    }
    Q_EMIT message(tr("Waiting for the drive to be simulated…"));
    auto* waiting = new QObject(this);
    connect(&m_analysis, &Analysis::runningChanged, waiting, [waiting, act](bool running) {
        if (!running) {
            waiting->deleteLater();
            act();
        }
    });
}

QString SheetActions::documentName() const {
    return m_document.path().isEmpty() ? tr("Untitled") : QFileInfo(m_document.path()).completeBaseName();
}

void SheetActions::withPaper(std::function<void(const SheetPaper&)> act) {
    whenAnalysed([this, act = std::move(act)] {
        const Circuit& circuit = m_document.circuit();
        const QString path = m_document.path();
        SheetPaper paper{circuit,
                         wiringSheet(circuit, m_analysis.findings(), circuitCheckSum(circuit), m_prices),
                         m_analysis.drive(), path.isEmpty() ? QString() : QFileInfo(path).fileName(),
                         QDate::currentDate().toString(Qt::ISODate)};
        Q_EMIT message(tr("Simulating the commissioning tests for the sheet…"));
        m_tester.start([this, act, paper = std::move(paper)]() mutable {
            paper.content = withTests(std::move(paper.content), paper.circuit);
            QMetaObject::invokeMethod(
                this, [act, paper = std::move(paper)] { act(paper); }, Qt::QueuedConnection);
        });
    });
}

void SheetActions::openPreview(const SheetPaper& paper) {
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    prepareSheetPrinter(*printer, SheetSize::A4);
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
    prepareSheetPrinter(printer, SheetSize::A4);
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

void SheetActions::askAndWriteChart() {
    const QString path =
        m_dialogs.pathToSave({tr("Write the drive chart"), tr("Pictures (*.png)"), QStringLiteral("png"),
                              documentName() + QStringLiteral(".png")});
    if (path.isEmpty()) {
        return;
    }
    if (!m_analysis.drive()) {
        m_dialogs.showError(
            tr("There is no drive chart to write."),
            {ErrorCode::FileUnwritable, tr("The circuit was not simulated yet.").toStdString(), {}});
        return;
    }
    report(writeDriveChartPng(path, *m_analysis.drive(), m_document.circuit()), path);
}

void SheetActions::askAndWriteDrawing() {
    const QString path =
        m_dialogs.pathToSave({tr("Write the circuit"), tr("Drawings (*.svg *.png *.pdf)"),
                              QStringLiteral("svg"), documentName() + QStringLiteral(".svg")});
    if (!path.isEmpty()) {
        report(writeCircuitDrawing(path, m_document.circuit()), path);
    }
}

} // namespace pumpwright
