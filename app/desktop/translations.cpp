#include "app/desktop/translations.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

/// The library is static: without this call the linker leaves the texts out. Qt wants it outside namespaces.
static void loadTexts() {
    Q_INIT_RESOURCE(translations);
}

namespace pumpwright {
namespace {

const QString kFolder = QStringLiteral(":/translations");
const QString kName = QStringLiteral("pumpwright");

} // namespace

void speak(const QLocale& locale) {
    loadTexts();
    // One each for the program's life: loading another language replaces the one before.
    static QTranslator own;
    static QTranslator qts;
    if (own.load(locale, kName, QStringLiteral("_"), kFolder)) {
        QCoreApplication::installTranslator(&own);
        // Qt's own words, as on the buttons of its dialogs, where they are installed.
        if (qts.load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                     QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
            QCoreApplication::installTranslator(&qts);
        }
    } else {
        QCoreApplication::removeTranslator(&own);
        QCoreApplication::removeTranslator(&qts);
    }
}

QStringList spokenLanguages() {
    loadTexts();
    QStringList languages;
    const auto files = QDir(kFolder).entryList({kName + QStringLiteral("_*.qm")}, QDir::Files, QDir::Name);
    for (const QString& file : files) {
        languages << file.mid(kName.size() + 1).chopped(3);
    }
    return languages;
}

} // namespace pumpwright
