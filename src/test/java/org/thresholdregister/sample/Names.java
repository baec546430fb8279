package org.thresholdregister.sample;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import org.thresholdregister.core.aging.Sex;

/** Invented people's names: given names of many languages with family names that nobody bears, or hardly anybody. */
final class Names {

    private static final List<String> WOMEN = List.of(
            "Amara", "Ana", "Aoife", "Beatriz", "Bronwen", "Camila", "Chiara", "Dalia", "Elif", "Esther", "Fátima",
            "Greta", "Hanna", "Inés", "Ingrid", "Ivana", "Jasmin", "Joyce", "Keiko", "Lakshmi", "Leila", "Lucía",
            "Maeve", "Malia", "Marisol", "Mei", "Nadia", "Ngozi", "Noor", "Petra", "Priya", "Renée", "Rosa", "Samira",
            "Siobhán", "Tala", "Thandi", "Ximena", "Yara", "Zuzana");

    private static final List<String> MEN = List.of(
            "Adebayo", "Anders", "André", "Arjun", "Bao", "Bogdan", "Bram", "Cedric", "Chidi", "Daniel", "Dmitri",
            "Eduardo", "Emre", "Esteban", "Farid", "Gábor", "Gareth", "Hiro", "Ibrahim", "Ivo", "Jabari", "João",
            "Jorge", "Kamal", "Kofi", "Lars", "Luca", "Malik", "Marek", "Mateo", "Minh", "Nikhil", "Omar", "Pavel",
            "Ramón", "Sione", "Tadeo", "Tomás", "Viktor", "Wei", "Yusuf");

    private static final List<String> FAMILIES = List.of(
            "Adewonle",
            "Alderwick",
            "Ashmarrow",
            "Åkervind",
            "Bellfurrow",
            "Birchmoor",
            "Bramblecote",
            "Castañuelo",
            "Cindercombe",
            "Clayborrow",
            "Delacruzeta",
            "Dunmarrow",
            "Eskinolu",
            "Fallowmere",
            "Flintharrow",
            "Fonsecaro",
            "Glaswrighter",
            "Greyfennel",
            "Hartsorrel",
            "Hashimora",
            "Ikedamura",
            "Jarabinek",
            "Kilnworthy",
            "Kovagashi",
            "Lehrmarsh",
            "Lindqvarn",
            "Marlowick",
            "Mukherwal",
            "Nakashiroda",
            "Núñezal",
            "Oakenshard",
            "Okonwelu",
            "Ødegarth",
            "Pellingham",
            "Peñasombra",
            "Quillfeather",
            "Quispemar",
            "Rasmundsen",
            "Rushbarrow",
            "Sandvarrow",
            "Szentagor",
            "Tavarinho",
            "Thornquill",
            "Tranvinh",
            "Ueharada",
            "Vespucelli",
            "Wetherfold",
            "Wojtalik",
            "Yildirak",
            "Zielonkar",
            "Zurbanel",
            "Mbatheka",
            "Osterwhit");

    private Names() {}

    static String family(int workerNumber) {
        // 31 shares no factor with the number of families, so that neighbours on the roster differ.
        return FAMILIES.get(Math.floorMod(workerNumber * 31, FAMILIES.size()));
    }

    /** Moves on with every round through the families, so that a full name comes back only after 53 x 40 workers. */
    static String given(int workerNumber, Sex sex) {
        List<String> names = sex == Sex.FEMALE ? WOMEN : MEN;
        int round = workerNumber / FAMILIES.size();
        return names.get(Math.floorMod(workerNumber % FAMILIES.size() * 7 + round, names.size()));
    }

    /** An address in a domain that is reserved for examples. */
    static String email(String givenName, String familyName, int workerNumber) {
        return ascii(givenName) + "." + ascii(familyName) + workerNumber + "@fernhollow.example";
    }

    private static String ascii(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replace('Ø', 'O')
                .toLowerCase(Locale.ROOT);
    }
}
