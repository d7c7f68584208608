// The main of every test program that shows widgets: one QApplication, settings in a folder of its own, and
// an unexpected warning of Qt fails the run.
#define CATCH_CONFIG_RUNNER
#include "tests/support/catch.h"

#include <QApplication>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <atomic>
#include <cstdio>

namespace {

std::atomic<int> warnings{0};
std::string currentTest;

class TestNames final : public Catch::TestEventListenerBase {
public:
    using TestEventListenerBase::TestEventListenerBase;
    void testCaseStarting(const Catch::TestCaseInfo& test) override { currentTest = test.name; }
};

CATCH_REGISTER_LISTENER(TestNames)

bool isExpected(const QString& message) {
    // The offscreen platform says so of every window that has a least size.
    return message.contains(QLatin1String("This plugin does not support propagateSizeHints()")) ||
           message.contains(QLatin1String("This plugin does not support raise()")) ||
           // And of every menu that opens.
           message.contains(QLatin1String("This plugin does not support grabbing the"));
}

void judgeMessage(QtMsgType type, const QMessageLogContext&, const QString& message) {
    if (type == QtDebugMsg || type == QtInfoMsg || isExpected(message)) {
        return;
    }
    ++warnings;
    std::fprintf(stderr, "unexpected message of Qt in \"%s\": %s\n", currentTest.c_str(),
                 qPrintable(message));
}

} // namespace

int main(int argc, char** argv) {
    QTemporaryDir runtime;
    if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR")) {
        qputenv("XDG_RUNTIME_DIR", runtime.path().toUtf8());
    }
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
    qputenv("XDG_DATA_HOME", settings.path().toUtf8());
    qInstallMessageHandler(judgeMessage);
    // Catch reads its own arguments.
    int qtArguments = 1;
    const QApplication app(qtArguments, argv);
    const int failed = Catch::Session().run(argc, argv);
    return failed != 0 ? failed : warnings.load();
}
