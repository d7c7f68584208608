#pragma once

#include <QObject>
#include <QThreadPool>

#include <atomic>

class QAction;
class QWidget;

namespace pumpwright {

class Analysis;
class Dialogs;
class Document;

/// Holds the open circuit against a file as it was before.
class CompareActions final : public QObject {
    Q_OBJECT

public:
    CompareActions(Document& document, Analysis& analysis, Dialogs& dialogs, QWidget& window);
    ~CompareActions() override;

    QAction& compare() { return *m_compare; }

    /// Reads the file, drives and checks it on another thread, then shows what differs.
    void compareWith(const QString& path);

Q_SIGNALS:
    void message(const QString& text);

private:
    void ask();

    Document& m_document;
    Analysis& m_analysis;
    Dialogs& m_dialogs;
    QWidget& m_window;
    QAction* m_compare;
    std::atomic<bool> m_ends{false};
    QThreadPool m_thread; ///< last, so that it ends first
};

} // namespace pumpwright
