#include "app/desktop/panels/parts_model.h"
#include "app/desktop/translations.h"
#include "tests/support/catch.h"

#include <QAbstractItemModelTester>
#include <QLocale>

using namespace pumpwright;

namespace {

/// The names in the drawer, group by group.
QStringList namesIn(const PartsModel& model) {
    QStringList names;
    for (int group = 0; group < model.rowCount(); ++group) {
        const QModelIndex parent = model.index(group, 0, {});
        for (int row = 0; row < model.rowCount(parent); ++row) {
            names << model.data(model.index(row, PartsModel::Name, parent), Qt::DisplayRole).toString();
        }
    }
    return names;
}

} // namespace

TEST_CASE("parts of the catalogue are named in the user's language, those of an own catalogue as they are",
          "[panels][translations]") {
    Catalogue catalogue;
    catalogue.entries.resize(2);
    catalogue.entries[0].id = "brake-lamp-switch";
    catalogue.entries[0].title = "Brake lamp switch";
    catalogue.entries[0].kind = "pedal-switch";
    catalogue.entries[1] = catalogue.entries[0];
    catalogue.entries[1].id = "mine";
    catalogue.entries[1].title = "Switch from the shelf";
    CHECK(namesIn(PartsModel(catalogue)).contains(QStringLiteral("Brake lamp switch")));
    speak(QLocale(QLocale::German));
    PartsModel model(catalogue);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    const QStringList names = namesIn(model);
    speak(QLocale(QLocale::English));
    CHECK(names.contains(QStringLiteral("Bremslichtschalter")));
    CHECK(names.contains(QStringLiteral("Switch from the shelf")));
    CHECK_FALSE(names.contains(QStringLiteral("Brake lamp switch")));
}
