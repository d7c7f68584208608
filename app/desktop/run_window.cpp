#include "app/desktop/run_window.h"

#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/focus_style.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"
#include "app/desktop/running_program.h"
#include "app/desktop/theme.h"
#include "app/desktop/translations.h"
#include "app/desktop/windows.h"

#include <QApplication>
#include <QFileInfo>

#include <clocale>

namespace pumpwright {
namespace {

/// Where there is nobody to see the window of the running program, each start is a program of its own.
QString socketOfDisplay() {
    return QGuiApplication::platformName() == QLatin1String("offscreen") ? QString()
                                                                         : RunningProgram::socketPath();
}

} // namespace

int runWindow(int argc, char** argv, const QString& file) {
    const QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("pumpwright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Pumpwright"));
    std::setlocale(LC_NUMERIC, "C"); // Qt has set the user's; libraries that read numbers must not follow it
    QApplication::setStyle(new FocusStyle);
    speak(QLocale());
    const QString socket = socketOfDisplay();
    const QString path = file.isEmpty() ? file : QFileInfo(file).absoluteFilePath();
    if (RunningProgram::handOver(socket, path)) {
        return 0;
    }
    Preferences preferences;
    const auto showColours = [&preferences] { showTheme(themeNamed(preferences.themeName())); };
    QObject::connect(&preferences, &Preferences::changed, &preferences, showColours);
    showColours();
    const Result<Catalogue> catalogue = readCatalogue(cataloguePaths());
    Windows windows(catalogue.value_or(Catalogue{}), preferences);
    RunningProgram program;
    QObject::connect(&program, &RunningProgram::asked, &windows,
                     [&windows](const QString& asked) { windows.open(asked); });
    program.listen(socket);
    MainWindow& first = windows.open(path);
    if (!catalogue) {
        first.dialogs().showError(
            QApplication::translate("pumpwright::MainWindow", "The catalogue of parts can't be read."),
            catalogue.error());
    }
    return QApplication::exec();
}

} // namespace pumpwright
