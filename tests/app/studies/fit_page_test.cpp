#include "app/desktop/document/document.h"
#include "app/desktop/studies/fit_page.h"
#include "app/desktop/studies/log_columns_model.h"
#include "app/desktop/studies/study_page.h"
#include "core/files/samples_csv.h"
#include "core/simulate/drive.h"
#include "tests/app/support/one_path.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QAbstractItemModelTester>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

using namespace pumpwright;

namespace {

/// A booster that bleeds down through a leak.
Circuit booster(double leakHole_m) {
    DrivePlan plan;
    plan.duration_s = 120;
    plan.initialVacuum_Pa = 70e3;
    return CircuitBuilder().part("booster", "A1", {{"leakHole_m", leakHole_m}}).plan(plan).build();
}

struct FitBench {
    QTemporaryDir folder;
    Document document;
    OnePath dialogs;
    FitPage page{document, dialogs};
    BenchLog log;

    FitBench() {
        document.startNew(booster(4e-5));
        QObject::connect(&page, &FitPage::logRead, [this](const BenchLog& read) { log = read; });
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
    }
    void open(const QByteArray& text) {
        dialogs.path = folder.filePath(QStringLiteral("log.csv"));
        QFile file(dialogs.path);
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        page.openLog();
    }
    void openDriveOf(const Circuit& circuit) {
        open(QByteArray::fromStdString(samplesCsv(circuit, simulateDrive(circuit).recording, 5)));
    }
};

} // namespace

TEST_CASE("values are fitted to a log and taken into the circuit as one step", "[studies][fit]") {
    FitBench bench;
    bench.openDriveOf(booster(1e-4));
    CHECK_FALSE(bench.log.traces.empty());
    bench.page.tick("A1.leakHole_m", true);
    bench.page.study().run();
    REQUIRE(QTest::qWaitFor([&] { return !bench.page.study().isRunning(); }, 120000));
    REQUIRE(bench.page.study().tables().size() == 2);
    REQUIRE(bench.page.takeButton().isEnabled());
    QTest::mouseClick(&bench.page.takeButton(), Qt::LeftButton);
    const double fitted = bench.document.circuit().parts.at(PartId{"A1"}).values.at("leakHole_m");
    CHECK(std::abs(fitted - 1e-4) < 1e-6);
    bench.document.undoStack().undo();
    CHECK(bench.document.circuit() == booster(4e-5));
}

TEST_CASE("columns are told what they are, and their unit", "[studies][fit]") {
    FitBench bench;
    bench.open("t [s];p\n0;60,5\n1;60\n2;59\n");
    LogColumnsModel& columns = bench.page.columns();
    QAbstractItemModelTester tester(&columns, QAbstractItemModelTester::FailureReportingMode::Warning);
    CHECK(bench.log.traces.empty());
    CHECK(columns.setData(columns.index(1, LogColumnsModel::Is), QStringLiteral("A1:vacuum"), Qt::EditRole));
    REQUIRE(bench.log.traces.size() == 1);
    CHECK(std::abs(bench.log.traces[0].values[0] - 60.5e3) < 1);
    CHECK(columns.setData(columns.index(1, LogColumnsModel::Unit), QStringLiteral("kPa abs"), Qt::EditRole));
    CHECK(std::abs(bench.log.traces[0].values[0] - (101325 - 60.5e3)) < 1);
    bench.page.offset().setText(QStringLiteral("-1 s"));
    Q_EMIT bench.page.offset().editingFinished();
    CHECK(bench.log.traces[0].times_s.front() == -1);
}

TEST_CASE("what cannot be fitted is said, and nothing runs", "[studies][fit]") {
    FitBench bench;
    bench.page.study().run();
    CHECK_FALSE(bench.page.study().isRunning());
    bench.openDriveOf(booster(1e-4));
    bench.page.study().run(); // no value is ticked
    CHECK_FALSE(bench.page.study().isRunning());
    bench.open("no numbers\n");
    CHECK(bench.dialogs.errors == 1);
}
