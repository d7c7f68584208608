#include "app/desktop/export_actions.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/sheet/circuit_export.h"
#include "app/desktop/sheet/drive_figure.h"
#include "app/desktop/sheet/written_file.h"
#include "core/files/csv_text.h"
#include "core/files/findings_text.h"
#include "core/files/samples_csv.h"

#include <QAction>
#include <QFileInfo>

namespace pumpwright {
namespace {

bool endsIn(const QString& path, const char* suffix) {
    return QFileInfo(path).suffix().compare(QLatin1String(suffix), Qt::CaseInsensitive) == 0;
}

Result<void> writeText(const QString& path, const std::string& text, const QString& what) {
    return writeWholeFile(path, QByteArray::fromStdString(text), what);
}

} // namespace

ExportActions::ExportActions(Document& document, Analysis& analysis, Dialogs& dialogs, QObject* parent)
    : QObject(parent), m_document(document), m_analysis(analysis), m_dialogs(dialogs) {
    const QString csv = tr("Tables (*.csv)");
    add({tr("&Schematic…"), tr("Write the schematic"), tr("Drawings (*.svg *.png *.pdf)"),
         QStringLiteral(".svg"),
         [this](const QString& path) { return writeCircuitDrawing(path, m_document.circuit()); }});
    add({tr("Drive &chart…"), tr("Write the drive chart"), tr("Pictures and tables (*.png *.svg *.csv)"),
         QStringLiteral("-drive.png"), [this](const QString& path) { return writeChart(path); }});
    add({tr("W&ires as table…"), tr("Write the wires"), csv, QStringLiteral("-wires.csv"),
         [this](const QString& path) {
             return writeText(path, csvTable(wiringSheet(m_document.circuit(), {}, {}).wires),
                              tr("The table"));
         }});
    add({tr("&Parts list as table…"), tr("Write the parts list"), csv, QStringLiteral("-parts.csv"),
         [this](const QString& path) {
             return writeText(path, csvTable(wiringSheet(m_document.circuit(), {}, {}, m_prices).parts),
                              tr("The table"));
         }});
    add({tr("&Nets as table…"), tr("Write which terminals are joined"), csv, QStringLiteral("-nets.csv"),
         [this](const QString& path) {
             return writeText(path, csvTable(netTable(m_document.circuit())), tr("The table"));
         }});
    add({tr("&Findings…"), tr("Write the findings"), tr("Text and data (*.md *.json)"),
         QStringLiteral("-findings.md"), [this](const QString& path) { return writeFindings(path); }});
}

void ExportActions::add(Export one) {
    auto* action = new QAction(one.text, this);
    m_actions << action;
    connect(action, &QAction::triggered, this, [this, one = std::move(one)] { askAndWrite(one); });
}

void ExportActions::askAndWrite(const Export& one) {
    const QString base =
        m_document.path().isEmpty() ? tr("Untitled") : QFileInfo(m_document.path()).completeBaseName();
    const QString suggested = base + one.ending;
    const QString path =
        m_dialogs.pathToSave({one.title, one.filter, QFileInfo(suggested).suffix(), suggested});
    if (path.isEmpty()) {
        return;
    }
    m_analysis.whenDone(this, [this, path, write = one.write] {
        const QString name = QFileInfo(path).fileName();
        if (const Result<void> written = write(path)) {
            Q_EMIT message(tr("“%1” is written.").arg(name));
        } else {
            m_dialogs.showError(tr("“%1” is not written.").arg(name), written.error());
        }
    });
}

Result<void> ExportActions::writeChart(const QString& path) const {
    constexpr double kEvery_s = 0.1;
    const auto drive = m_analysis.drive();
    if (!drive) {
        return unwritableFile(path, tr("The circuit was not simulated yet. Try again in a moment."));
    }
    return endsIn(path, "csv") ? writeText(path, samplesCsv(m_document.circuit(), drive->recording, kEvery_s),
                                           tr("The table"))
                               : writeDriveChart(path, *drive, m_document.circuit());
}

Result<void> ExportActions::writeFindings(const QString& path) const {
    const auto drive = m_analysis.drive();
    if (!drive) {
        return unwritableFile(path, tr("The circuit was not simulated yet. Try again in a moment."));
    }
    const FindingsReport report{QFileInfo(m_document.path()).fileName().toStdString(), m_document.circuit(),
                                *drive, m_analysis.findings()};
    if (!endsIn(path, "md") && !endsIn(path, "json")) {
        return unwritableFile(path,
                              tr("The findings can't be written in this form. End the file name in .md or "
                                 ".json."));
    }
    return writeText(path, endsIn(path, "json") ? findingsJson(report) : findingsMarkdown(report),
                     tr("The list of findings"));
}

} // namespace pumpwright
