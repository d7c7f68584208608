#include "app/desktop/file_actions.h"

#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/document/document.h"
#include "app/desktop/icons.h"
#include "app/desktop/preferences.h"
#include "core/files/circuit_file.h"

#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QMenu>

namespace pumpwright {
namespace {

const QString kSuffix = QStringLiteral("pumpwright");

QAction* newAction(QObject* parent, const QString& text, const QString& icon, const QKeySequence& keys,
                   const QString& tip) {
    auto* action = new QAction(ownIcon(icon), text, parent);
    action->setShortcut(keys);
    action->setToolTip(QStringLiteral("%1 (%2)").arg(tip, keys.toString(QKeySequence::NativeText)));
    action->setStatusTip(tip);
    return action;
}

QString circuitFilter() {
    return FileActions::tr("Circuits (*.pumpwright)");
}

/// "first-try.pumpwright" as "First try".
QString titleOf(const QString& path) {
    QString name = QFileInfo(path).completeBaseName().replace(QLatin1Char('-'), QLatin1Char(' '));
    if (!name.isEmpty()) {
        name[0] = name[0].toUpper();
    }
    return name;
}

} // namespace

QStringList circuitsIn(const QString& path) {
    const QDir folder(path);
    QStringList paths;
    const auto names = folder.entryList({QStringLiteral("*.pumpwright")}, QDir::Files, QDir::Name);
    for (const QString& name : names) {
        paths << folder.filePath(name);
    }
    return paths;
}

QStringList samplePaths() {
    return circuitsIn(QString::fromStdString(samplesFolder().string()));
}

FileActions::FileActions(Document& document, Preferences& preferences, Dialogs& dialogs, QObject* parent)
    : QObject(parent), m_document(document), m_preferences(preferences), m_dialogs(dialogs),
      m_new(newAction(this, tr("&New"), QStringLiteral("new"), QKeySequence::New,
                      tr("Start an empty circuit"))),
      m_open(newAction(this, tr("&Open…"), QStringLiteral("open"), QKeySequence::Open,
                       tr("Open a circuit file"))),
      m_save(
          newAction(this, tr("&Save"), QStringLiteral("save"), QKeySequence::Save, tr("Save the circuit"))),
      m_saveAs(newAction(this, tr("Save &as…"), QStringLiteral("save"),
                         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
                         tr("Save the circuit under another name"))) {
    connect(m_new, &QAction::triggered, this, [this] {
        if (mayLeave()) {
            m_document.startNew(m_preferences.newCircuit());
        }
    });
    connect(m_open, &QAction::triggered, this, &FileActions::askAndOpen);
    connect(m_save, &QAction::triggered, this, &FileActions::save);
    connect(m_saveAs, &QAction::triggered, this, &FileActions::saveAs);
}

void FileActions::askAndOpen() {
    if (!mayLeave()) {
        return;
    }
    const QString path = m_dialogs.pathToOpen(
        {tr("Open a circuit"), circuitFilter(), kSuffix, QFileInfo(m_document.path()).absolutePath()});
    if (!path.isEmpty()) {
        open(path);
    }
}

bool FileActions::open(const QString& path) {
    if (const auto opened = m_document.open(path); !opened) {
        m_dialogs.showError(
            tr("“%1” can't be opened. The open circuit is unchanged.").arg(QFileInfo(path).fileName()),
            opened.error());
        return false;
    }
    m_preferences.addRecentFile(path);
    return true;
}

void FileActions::askAndOpenSample(const QString& path) {
    if (mayLeave()) {
        openSample(path);
    }
}

bool FileActions::openSample(const QString& path) {
    const auto circuit = readCircuit(path.toStdString());
    if (!circuit) {
        m_dialogs.showError(tr("“%1” can't be opened. The open circuit is unchanged.").arg(titleOf(path)),
                            circuit.error());
        return false;
    }
    m_document.startNew(*circuit);
    return true;
}

bool FileActions::mayLeave() {
    if (!m_document.isModified()) {
        return true;
    }
    switch (m_dialogs.unsavedAnswer(documentName())) {
    case UnsavedAnswer::Save:
        return save();
    case UnsavedAnswer::Discard:
        return true;
    case UnsavedAnswer::Cancel:
        break;
    }
    return false;
}

bool FileActions::save() {
    if (m_document.path().isEmpty()) {
        return saveAs();
    }
    return writeTo(m_document.path());
}

bool FileActions::writeTo(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    if (const auto saved = m_document.save(path); !saved) {
        m_dialogs.showError(tr("“%1” is not saved. Your changes are still here.").arg(name), saved.error());
        return false;
    }
    m_preferences.addRecentFile(path);
    Q_EMIT message(tr("“%1” is saved.").arg(name));
    return true;
}

bool FileActions::saveAs() {
    const QString path = m_dialogs.pathToSave(
        {tr("Save the circuit"), circuitFilter(), kSuffix,
         m_document.path().isEmpty() ? documentName() + QLatin1Char('.') + kSuffix : m_document.path()});
    return !path.isEmpty() && writeTo(path);
}

QString FileActions::documentName() const {
    return m_document.path().isEmpty() ? tr("Untitled") : QFileInfo(m_document.path()).completeBaseName();
}

void FileActions::fillSamples(QMenu& menu) {
    const QStringList paths = samplePaths();
    for (const QString& path : paths) {
        connect(menu.addAction(titleOf(path)), &QAction::triggered, this,
                [this, path] { askAndOpenSample(path); });
    }
    menu.setEnabled(!paths.isEmpty());
}

void FileActions::fillTemplates(QMenu& menu) {
    connect(&menu, &QMenu::aboutToShow, this, [this, &menu] {
        menu.clear();
        for (const QStringList& paths : {circuitsIn(m_preferences.templatesFolder()), samplePaths()}) {
            for (const QString& path : paths) {
                QString title = titleOf(path);
                connect(menu.addAction(title.replace(QLatin1Char('&'), QStringLiteral("&&"))),
                        &QAction::triggered, this, [this, path] { askAndOpenSample(path); });
            }
            menu.addSeparator();
        }
        QAction* keep = menu.addAction(tr("&Keep this circuit as a template…"));
        keep->setEnabled(!m_document.circuit().parts.empty());
        connect(keep, &QAction::triggered, this, &FileActions::keepAsTemplate);
    });
}

void FileActions::keepAsTemplate() {
    const QDir folder(m_preferences.templatesFolder());
    folder.mkpath(QStringLiteral("."));
    const QString path = m_dialogs.pathToSave({tr("Keep as a template"), circuitFilter(), kSuffix,
                                               folder.filePath(documentName() + QLatin1Char('.') + kSuffix)});
    if (path.isEmpty()) {
        return;
    }
    const QString name = QFileInfo(path).fileName();
    if (const auto written = writeCircuit(m_document.circuit(), path.toStdString()); !written) {
        m_dialogs.showError(tr("The template “%1” is not written.").arg(name), written.error());
    } else {
        Q_EMIT message(tr("The template “%1” is kept.").arg(name));
    }
}

void FileActions::fillRecent(QMenu& menu) {
    connect(&menu, &QMenu::aboutToShow, this, [this, &menu] {
        menu.clear();
        const QStringList paths = m_preferences.recentFiles();
        for (const QString& path : paths) {
            QString text = QFileInfo(path).fileName();
            // A single & would become a keyboard mark.
            QAction* action = menu.addAction(text.replace(QLatin1Char('&'), QStringLiteral("&&")));
            // Escaped: a tool tip that looks like markup would be taken for it.
            action->setToolTip(QStringLiteral("<p>%1</p>").arg(path.toHtmlEscaped()));
            connect(action, &QAction::triggered, this, [this, path] {
                if (mayLeave()) {
                    open(path);
                }
            });
        }
        if (paths.isEmpty()) {
            menu.addAction(tr("No file yet"))->setEnabled(false);
            return;
        }
        menu.addSeparator();
        connect(menu.addAction(tr("Forget this list")), &QAction::triggered, &m_preferences,
                &Preferences::clearRecentFiles);
    });
}

} // namespace pumpwright
