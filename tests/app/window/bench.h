#pragma once

#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"
#include "tests/support/catch.h"

#include <QDir>
#include <QScreen>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace pumpwright {

/// Answers as a test tells it, and remembers what was said.
class ToldDialogs final : public Dialogs {
public:
    QString path;
    UnsavedAnswer unsaved = UnsavedAnswer::Cancel;
    int unsavedAsked = 0;
    QList<Error> errors;

    QString pathToOpen(const PathRequest&) override { return path; }
    QString pathToSave(const PathRequest&) override { return path; }
    UnsavedAnswer unsavedAnswer(const QString&) override {
        ++unsavedAsked;
        return unsaved;
    }
    void showError(const QString&, const Error& error) override { errors << error; }
};

/// A catalogue with one part for each letter that tests place.
inline Catalogue smallCatalogue() {
    Catalogue catalogue;
    catalogue.currency = "EUR";
    catalogue.entries.push_back(
        {"relay-plain", "Relay, make contact, 30 A", "relay", {}, {}, 4.5, "generic"});
    catalogue.entries.push_back(
        {"fuse-15", "Blade fuse 15 A", "fuse", {{"rating_A", 15}}, {}, 0.4, "generic"});
    return catalogue;
}

/// The whole window on the offscreen platform, with settings of its own.
struct WindowBench {
    QTemporaryDir folder;
    Preferences preferences{folder.filePath(QStringLiteral("settings.ini"))};
    ToldDialogs* dialogs = new ToldDialogs;
    MainWindow window;

    explicit WindowBench(const Catalogue& catalogue = smallCatalogue())
        : window(catalogue, preferences, std::unique_ptr<Dialogs>(dialogs)) {
        window.resize(1280, 800);
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
    }
    ~WindowBench() { dialogs->unsaved = UnsavedAnswer::Discard; }

    void waitForAnalysis() {
        REQUIRE(QTest::qWaitFor([this] { return !window.analysis().isRunning(); }, 120000));
    }
    /// Keeps what the screen shows for people to look at, where a folder for it is named.
    void keepPicture(const QString& name) {
        const QString pictures = qEnvironmentVariable("PUMPWRIGHT_PICTURES");
        if (!pictures.isEmpty()) {
            QTest::qWait(300); // till all is painted
            REQUIRE(QDir().mkpath(pictures));
            REQUIRE(window.screen()->grabWindow(0).save(pictures + QLatin1Char('/') + name));
        }
    }
    QString file(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
};

} // namespace pumpwright
