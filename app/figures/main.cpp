// Draws the pictures of the handbook: handbook_figures SAMPLES FIGURES. Needs no display.
#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"
#include "app/desktop/sheet/circuit_export.h"
#include "app/desktop/sheet/drive_figure.h"
#include "app/desktop/sheet/sheet_pages.h"
#include "core/checks/rule.h"
#include "core/files/catalogue.h"
#include "core/files/circuit_file.h"
#include "core/nets/nets.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QDockWidget>
#include <QEventLoop>
#include <QPainter>
#include <QTemporaryDir>
#include <QTimer>

#include <fmt/core.h>

using namespace pumpwright;

namespace {

class Figures {
public:
    Figures(QString samples, QString folder) : m_samples(std::move(samples)), m_folder(std::move(folder)) {}

    bool drawAll() {
        const auto sound = readCircuit(sample("put-right").toStdString());
        if (!sound) {
            fmt::print(stderr, "{}\n", sound.error().text);
            return false;
        }
        kept(writeCircuitDrawing(path("put-right.svg"), *sound), "put-right.svg");
        kept(writeDriveChart(path("put-right-drive.png"), simulateDrive(*sound), *sound),
             "put-right-drive.png");
        drawBenchRuns(*sound);
        drawSheet(*sound);
        drawWindow();
        return m_allKept;
    }

private:
    QString sample(const char* name) const {
        return m_samples + QLatin1Char('/') + QLatin1String(name) + QStringLiteral(".pumpwright");
    }
    QString path(const char* name) const { return m_folder + QLatin1Char('/') + QLatin1String(name); }
    void kept(bool written, const char* name) {
        m_allKept = m_allKept && written;
        fmt::print("{}: {}\n", name, written ? "drawn" : "not written");
    }
    void kept(const Result<void>& written, const char* name) { kept(written.has_value(), name); }

    /// What a pump-down and a bleed-down look like.
    void drawBenchRuns(Circuit circuit) {
        circuit.plan = {};
        circuit.plan.name = "pump-down";
        circuit.plan.duration_s = 20;
        circuit.plan.initialVacuum_Pa = 0;
        for (auto& [id, part] : circuit.parts) {
            if (part.kind == "hand-switch") {
                part.choices["atStart"] = "on";
            }
        }
        kept(writeDriveChart(path("pump-down.png"), simulateDrive(circuit), circuit), "pump-down.png");
        for (auto& [id, part] : circuit.parts) {
            if (part.kind == "hand-switch") {
                part.choices["atStart"] = "off";
            }
        }
        circuit.plan.name = "bleed-down";
        circuit.plan.duration_s = 300;
        circuit.plan.initialVacuum_Pa = 70e3;
        kept(writeDriveChart(path("bleed-down.png"), simulateDrive(circuit), circuit), "bleed-down.png");
    }

    /// The first page, and the one on which fault finding begins.
    void drawSheet(const Circuit& circuit) {
        const auto drive = std::make_shared<const DriveResult>(simulateDrive(circuit));
        const Nets nets = findNets(circuit);
        const auto findings = checkCircuit({circuit, nets, drive.get()});
        SheetPaper paper;
        paper.circuit = circuit;
        paper.content = withTests(wiringSheet(circuit, findings, circuitCheckSum(circuit)), circuit,
                                  runBreakdowns(circuit));
        paper.drive = drive;
        paper.fileName = QStringLiteral("put-right.pumpwright");
        paper.printedOn = QString::fromStdString(circuit.title.date);
        drawPage(paper, 0, "sheet-schematic.png");
        paper.content.tests.clear();
        const SheetPages pages(paper);
        drawPage(paper, pages.count() - 2, "sheet-faults.png");
    }

    void drawPage(const SheetPaper& paper, int page, const char* name) {
        constexpr double kScale = 0.5; ///< pixels to a tenth of a millimetre
        QImage image((sheetExtent(paper.size) * kScale).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(kScale, kScale);
        SheetPages(paper).paint(painter, page);
        painter.end();
        kept(image.save(path(name)), name);
    }

    void drawWindow() {
        const QTemporaryDir settings;
        Preferences preferences(settings.filePath(QStringLiteral("settings.ini")));
        preferences.setCautionsUnderstood();
        const auto catalogue = readCatalogue(cataloguePaths());
        MainWindow window(catalogue.value_or(Catalogue{}), preferences);
        window.resize(1280, 800);
        window.show();
        window.openSample(sample("put-right"));
        settle(window);
        kept(window.grab().save(path("window.png")), "window.png");
        window.openSample(sample("first-try"));
        settle(window);
        auto* findings = window.findChild<QDockWidget*>(QStringLiteral("findings"));
        auto* list = findings == nullptr ? nullptr : findings->findChild<QAbstractItemView*>();
        if (list != nullptr) {
            list->setCurrentIndex(list->model()->index(0, 0));
        }
        settle(window);
        kept(list != nullptr && findings->grab().save(path("findings.png")), "findings.png");
    }

    static void settle(MainWindow& window) {
        QEventLoop loop;
        window.analysis().whenDone(&loop, [&loop] { QTimer::singleShot(800, &loop, &QEventLoop::quit); });
        loop.exec();
    }

    QString m_samples;
    QString m_folder;
    bool m_allKept = true;
};

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    if (argc != 3) {
        fmt::print(stderr, "Use: handbook_figures SAMPLES FIGURES\n");
        return 2;
    }
    return Figures(QString::fromLocal8Bit(argv[1]), QString::fromLocal8Bit(argv[2])).drawAll() ? 0 : 3;
}
