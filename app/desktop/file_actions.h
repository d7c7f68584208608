#pragma once

#include <QObject>
#include <QString>

class QAction;
class QMenu;

namespace pumpwright {

class Dialogs;
class Document;
class Preferences;

/// New, open, save and what belongs to them. Nothing here loses changes without asking.
class FileActions final : public QObject {
    Q_OBJECT

public:
    FileActions(Document& document, Preferences& preferences, Dialogs& dialogs, QObject* parent = nullptr);

    QAction& newCircuit() { return *m_new; }
    QAction& openFile() { return *m_open; }
    QAction& saveFile() { return *m_save; }
    QAction& saveFileAs() { return *m_saveAs; }
    /// Menus that fill themselves; owned by the caller's menu.
    void fillSamples(QMenu& menu);
    void fillRecent(QMenu& menu);
    /// Circuits to begin from: the user's own, then the samples, and keeping this one among them.
    void fillTemplates(QMenu& menu);

    /// Opens a file without asking; on failure says why and leaves the open circuit as it was.
    bool open(const QString& path);
    /// Opens a sample as a circuit that belongs to no file, so that saving can't change the sample.
    bool openSample(const QString& path);
    /// False where the user wants to keep what is open.
    bool mayLeave();
    bool save();
    bool saveAs();
    void askAndOpen();
    void askAndOpenSample(const QString& path);

    /// Name for the window's title.
    QString documentName() const;

Q_SIGNALS:
    void message(const QString& text);

private:
    bool writeTo(const QString& path);
    void keepAsTemplate();

    Document& m_document;
    Preferences& m_preferences;
    Dialogs& m_dialogs;
    QAction* m_new;
    QAction* m_open;
    QAction* m_save;
    QAction* m_saveAs;
};

/// Paths of the samples, in the order of their names.
QStringList samplePaths();

} // namespace pumpwright
