#include "app/desktop/document/document.h"
#include "app/desktop/panels/plan_maker.h"
#include "tests/app/support/one_path.h"
#include "tests/support/catch.h"

#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>

using namespace pumpwright;

TEST_CASE("a drive of a sort is made as one step", "[panels][plan-maker]") {
    Document document;
    OnePath dialogs;
    PlanMaker maker(document, dialogs);
    REQUIRE(document.open(QStringLiteral("samples/put-right.pumpwright")));
    const DrivePlan before = document.circuit().plan;
    maker.sorts().setCurrentIndex(maker.sorts().findData(QStringLiteral("car-park")));
    maker.seed().setValue(3);
    QTest::mouseClick(&maker.makeButton(), Qt::LeftButton);
    CHECK(document.circuit().plan.presses.size() > 10);
    CHECK(document.circuit().plan.name == "Car park, seed 3");
    document.undoStack().undo();
    CHECK(document.circuit().plan == before);
}

TEST_CASE("presses are taken from a speed trace, and a table that is none is refused",
          "[panels][plan-maker]") {
    QTemporaryDir folder;
    Document document;
    OnePath dialogs;
    PlanMaker maker(document, dialogs);
    REQUIRE(document.open(QStringLiteral("samples/put-right.pumpwright")));
    dialogs.path = folder.filePath(QStringLiteral("speed.csv"));
    QFile file(dialogs.path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("time,speed\n0,90\n5,90\n6,80\n7,70\n8,60\n9,50\n10,50\n15,50\n");
    file.close();
    QTest::mouseClick(&maker.traceButton(), Qt::LeftButton);
    CHECK(document.circuit().plan.presses.size() == 1);
    CHECK(document.circuit().plan.duration_s == 15);
    dialogs.path = QStringLiteral("nowhere.csv");
    QTest::mouseClick(&maker.traceButton(), Qt::LeftButton);
    CHECK(dialogs.errors == 1);
}
