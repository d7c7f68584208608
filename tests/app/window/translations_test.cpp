#include "app/desktop/shown_text.h"
#include "app/desktop/translations.h"
#include "tests/app/window/bench.h"

#include <QDockWidget>
#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <set>

using namespace pumpwright;

namespace {

struct Message {
    QString context;
    QString source;
    QStringList texts; ///< more than one where the language has more than one plural
    bool isFinished = true;
};

std::vector<Message> messagesOf(const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader reader(&file);
    std::vector<Message> messages;
    QString context;
    bool inTranslation = false;
    QString text;
    while (!reader.atEnd()) {
        const auto token = reader.readNext();
        if (token == QXmlStreamReader::StartElement) {
            if (reader.name() == QLatin1String("name")) {
                context = reader.readElementText();
            } else if (reader.name() == QLatin1String("source")) {
                messages.push_back({context, reader.readElementText(), {}, true});
            } else if (reader.name() == QLatin1String("translation")) {
                messages.back().isFinished = !reader.attributes().hasAttribute(QLatin1String("type"));
                inTranslation = true;
                text.clear();
            } else if (reader.name() == QLatin1String("numerusform")) {
                messages.back().texts << reader.readElementText();
            }
        } else if (token == QXmlStreamReader::Characters && inTranslation) {
            text += reader.text();
        } else if (token == QXmlStreamReader::EndElement && reader.name() == QLatin1String("translation")) {
            inTranslation = false;
            if (messages.back().texts.isEmpty()) {
                messages.back().texts << text;
            }
        }
    }
    REQUIRE_FALSE(reader.hasError());
    return messages;
}

std::multiset<QString> placeholders(const QString& text) {
    static const QRegularExpression kPlaceholder(QStringLiteral("%(\\d+|n)|\\[\\*\\]"));
    std::multiset<QString> found;
    for (auto match = kPlaceholder.globalMatch(text); match.hasNext();) {
        found.insert(match.next().captured());
    }
    return found;
}

QString textsFile(const QString& language) {
    return QStringLiteral("resources/translations/pumpwright_%1.ts").arg(language);
}

QString coreTextsFile(const QString& language) {
    return QStringLiteral("resources/translations/core_%1.ts").arg(language);
}

/// Whether the text is a piece that goes on from the words before it.
bool goesOn(const QString& text) {
    return text.startsWith(QLatin1Char(' ')) || text.startsWith(QLatin1Char(','));
}

/// Which facts a pattern of core asks for, by their number in order.
std::multiset<int> factsUsed(const QString& pattern) {
    static const QRegularExpression kFact(QStringLiteral("\\{(\\d*)\\}"));
    std::multiset<int> facts;
    for (auto match = kFact.globalMatch(pattern); match.hasNext();) {
        const QString number = match.next().captured(1);
        facts.insert(number.isEmpty() ? static_cast<int>(facts.size()) : number.toInt());
    }
    return facts;
}

std::set<std::pair<QString, QString>> keysOf(const std::vector<Message>& messages) {
    std::set<std::pair<QString, QString>> keys;
    for (const Message& message : messages) {
        keys.emplace(message.context, message.source);
    }
    return keys;
}

} // namespace

TEST_CASE("every text of the window is there in German and in Spanish", "[window][translations]") {
    CHECK(spokenLanguages() == QStringList{QStringLiteral("de"), QStringLiteral("es")});
    for (const QString& language : spokenLanguages()) {
        const auto messages = messagesOf(textsFile(language));
        REQUIRE(messages.size() > 500);
        for (const Message& message : messages) {
            INFO(language.toStdString() << ": " << message.source.toStdString());
            CHECK(message.isFinished);
            REQUIRE_FALSE(message.texts.isEmpty());
            for (const QString& text : message.texts) {
                CHECK_FALSE(text.trimmed().isEmpty() != message.source.trimmed().isEmpty());
                CHECK(placeholders(text) == placeholders(message.source));
                CHECK(text.startsWith(QLatin1Char(' ')) == message.source.startsWith(QLatin1Char(' ')));
                CHECK(text.count(QLatin1Char('&')) == message.source.count(QLatin1Char('&')));
            }
        }
    }
}

TEST_CASE("every text of core is there in German and in Spanish, with all its facts",
          "[window][translations]") {
    for (const QString& language : spokenLanguages()) {
        const auto messages = messagesOf(coreTextsFile(language));
        REQUIRE(messages.size() > 700);
        for (const Message& message : messages) {
            INFO(language.toStdString() << ": " << message.source.toStdString());
            CHECK(message.isFinished);
            REQUIRE(message.texts.size() == 1);
            const QString& text = message.texts.front();
            CHECK_FALSE(text.trimmed().isEmpty());
            CHECK(goesOn(text) == goesOn(message.source));
            const int facts = static_cast<int>(message.source.count(QStringLiteral("{}")));
            CHECK(factsUsed(text) == factsUsed(message.source));
            CHECK_NOTHROW(filledIn(text.toStdString(), std::vector<std::string>(std::size_t(facts), "x")));
        }
    }
}

TEST_CASE("the texts of core that translators see are those of the sources", "[window][translations]") {
    const QTemporaryDir folder;
    const QString fresh = folder.filePath(QStringLiteral("core_de.ts"));
    QProcess update;
    update.start(QStringLiteral("python3"),
                 {QStringLiteral("resources/translations/update_core.py"), QStringLiteral(PUMPWRIGHT_LUPDATE),
                  QStringLiteral("core"), fresh});
    REQUIRE(update.waitForFinished(60000));
    REQUIRE(update.exitCode() == 0);
    const auto now = keysOf(messagesOf(fresh));
    CHECK(keysOf(messagesOf(coreTextsFile(QStringLiteral("de")))) == now);
    CHECK(keysOf(messagesOf(coreTextsFile(QStringLiteral("es")))) == now);
}

TEST_CASE("a finding is told in the user's language, facts and all", "[window][translations]") {
    speak(QLocale(QLocale::German));
    CHECK(translatedWords("Vacuum pump") == QStringLiteral("Unterdruckpumpe"));
    const Text found = say("{} and {}", std::string("K1"), std::string("{} & <b>"));
    CHECK(translated(found) == QStringLiteral("K1 und {} & <b>"));
    speak(QLocale(QLocale::English));
    CHECK(translated(found) == QStringLiteral("K1 and {} & <b>"));
    CHECK(translatedWords("Vacuum pump") == QStringLiteral("Vacuum pump"));
}

TEST_CASE("the texts that translators see are those of the sources", "[window][translations]") {
    const QTemporaryDir folder;
    const QString fresh = folder.filePath(QStringLiteral("fresh.ts"));
    QProcess lupdate;
    lupdate.start(QStringLiteral(PUMPWRIGHT_LUPDATE),
                  {QStringLiteral("-silent"), QStringLiteral("app/desktop"), QStringLiteral("-I"),
                   QStringLiteral("."), QStringLiteral("-locations"), QStringLiteral("none"),
                   QStringLiteral("-ts"), fresh});
    REQUIRE(lupdate.waitForFinished(60000));
    REQUIRE(lupdate.exitCode() == 0);
    const auto now = keysOf(messagesOf(fresh));
    REQUIRE(now.size() > 500);
    // What differs is brought up to date by the target update-translations.
    CHECK(keysOf(messagesOf(textsFile(QStringLiteral("de")))) == now);
    CHECK(keysOf(messagesOf(textsFile(QStringLiteral("es")))) == now);
}

TEST_CASE("the window speaks German, and English again", "[window][translations]") {
    speak(QLocale(QLocale::German));
    {
        WindowBench bench;
        CHECK(bench.window.findChild<QDockWidget*>(QStringLiteral("findings"))->windowTitle() ==
              QStringLiteral("Befunde"));
        bench.keepPicture(QStringLiteral("window-german.png"));
    }
    speak(QLocale(QLocale::English));
    WindowBench bench;
    CHECK(bench.window.findChild<QDockWidget*>(QStringLiteral("findings"))->windowTitle() ==
          QStringLiteral("Findings"));
}
