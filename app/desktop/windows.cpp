#include "app/desktop/windows.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"

#include <QFileInfo>

namespace pumpwright {
namespace {

constexpr int kAside_px = 32; ///< that the window below can be seen

bool isSameFile(const QString& one, const QString& other) {
    return !one.isEmpty() && QFileInfo(one) == QFileInfo(other);
}

/// Nothing in it and nothing done: it is there to be filled.
bool isUntouched(MainWindow& window) {
    const Document& document = window.document();
    return document.path().isEmpty() && !document.isModified() && document.circuit().parts.empty();
}

} // namespace

Windows::Windows(Catalogue catalogue, Preferences& preferences, QObject* parent)
    : QObject(parent), m_catalogue(std::move(catalogue)), m_preferences(preferences) {}

Windows::~Windows() {
    const QList<MainWindow*> left = m_windows;
    m_windows.clear();
    qDeleteAll(left);
}

MainWindow& Windows::openNew() {
    MainWindow* const before = m_windows.isEmpty() ? nullptr : m_windows.last();
    auto* window = new MainWindow(m_catalogue, m_preferences);
    window->setAttribute(Qt::WA_DeleteOnClose);
    if (before != nullptr && !before->isMaximized()) {
        window->resize(before->size());
        window->move(before->pos() + QPoint(kAside_px, kAside_px));
    }
    m_windows << window;
    connect(window, &MainWindow::windowRequested, this, [this] { openNew(); });
    connect(window, &QObject::destroyed, this, [this, window] { m_windows.removeAll(window); });
    window->show();
    return *window;
}

MainWindow* Windows::windowFor(const QString& file) const {
    for (MainWindow* window : m_windows) {
        if (isSameFile(window->document().path(), file)) {
            return window;
        }
    }
    for (MainWindow* window : m_windows) {
        if (isUntouched(*window)) {
            return window;
        }
    }
    return nullptr;
}

MainWindow& Windows::open(const QString& file) {
    MainWindow* const found = file.isEmpty() ? nullptr : windowFor(file);
    MainWindow& window = found != nullptr ? *found : openNew();
    if (!file.isEmpty() && !isSameFile(window.document().path(), file)) {
        window.open(file);
    }
    window.show();
    window.raise();
    window.activateWindow();
    return window;
}

} // namespace pumpwright
