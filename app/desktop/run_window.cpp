#include "app/desktop/run_window.h"

#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"

#include <QApplication>

#include <clocale>

namespace pumpwright {

int runWindow(int argc, char** argv, const QString& file) {
    const QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("pumpwright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Pumpwright"));
    std::setlocale(LC_NUMERIC, "C"); // Qt has set the user's; libraries that read numbers must not follow it
    Preferences preferences;
    const Result<Catalogue> catalogue = readCatalogue(cataloguePaths());
    MainWindow window(catalogue.value_or(Catalogue{}), preferences);
    window.show();
    if (!catalogue) {
        window.dialogs().showError(QStringLiteral("The catalogue of parts can't be read."),
                                   catalogue.error());
    }
    if (!file.isEmpty()) {
        window.open(file);
    }
    return QApplication::exec();
}

} // namespace pumpwright
