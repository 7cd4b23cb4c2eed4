package fencerow.printing;

import com.samskivert.mustache.Mustache;
import fencerow.wording.Texts;

/**
 * Lets a template ask for words by key: {@code {{paper.sit-test.title}}}.
 *
 * @param texts  of the language
 * @param prefix the part of the key read so far
 */
record Words(Texts texts, String prefix) implements Mustache.CustomContext {
    @Override
    public Object get(String name) {
        String key = prefix + "." + name;
        String deeper = key + ".";
        return texts.find(key).map(Object.class::cast).orElseGet(() -> {
            if (texts.keys().stream().noneMatch(each -> each.startsWith(deeper))) {
                throw new IllegalArgumentException("there are no words for [" + key + "] in language ["
                        + texts.language() + "]; add them to the content, or mend the template that asks for them");
            }
            return new Words(texts, key);
        });
    }
}
