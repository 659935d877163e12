<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name>ActionList</name>
    <message>
        <source>Action</source>
        <translation>Action</translation>
    </message>
    <message>
        <source>Actions</source>
        <translation>Actions</translation>
    </message>
    <message>
        <source>All actions</source>
        <translation>Toutes les actions</translation>
    </message>
    <message>
        <source>Find an action</source>
        <translation>Chercher une action</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Touche</translation>
    </message>
    <message>
        <source>No action is called so; a shorter word may do.</source>
        <translation>Aucune action ne porte ce nom ; un mot plus court peut-être.</translation>
    </message>
    <message>
        <source>What do you want to do?</source>
        <translation>Que voulez-vous faire ?</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>&amp;All actions…</source>
        <translation>&amp;Toutes les actions…</translation>
    </message>
    <message>
        <source>&amp;Copy stage</source>
        <translation>&amp;Copier l'étape</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Sombre</translation>
    </message>
    <message>
        <source>&amp;Duplicate stage</source>
        <translation>&amp;Dupliquer l'étape</translation>
    </message>
    <message>
        <source>&amp;Each as chosen</source>
        <translation>&amp;Chacune selon le choix</translation>
    </message>
    <message>
        <source>&amp;Figures of the curves</source>
        <translation>C&amp;hiffres des courbes</translation>
    </message>
    <message>
        <source>&amp;Guess first, then show…</source>
        <translation>&amp;Deviner d'abord, montrer ensuite…</translation>
    </message>
    <message>
        <source>&amp;House style…</source>
        <translation>Style &amp;maison…</translation>
    </message>
    <message>
        <source>&amp;Imperial units</source>
        <translation>Unités &amp;impériales</translation>
    </message>
    <message>
        <source>&amp;Keys and gestures…</source>
        <translation>&amp;Touches et gestes…</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>&amp;Lock this setting while aiming</source>
        <translation>&amp;Verrouiller ce réglage pour viser</translation>
    </message>
    <message>
        <source>&amp;Look up a word or a source…</source>
        <translation>&amp;Chercher un mot ou une source…</translation>
    </message>
    <message>
        <source>&amp;Metric units</source>
        <translation>Unités &amp;métriques</translation>
    </message>
    <message>
        <source>&amp;New recipe…</source>
        <translation>&amp;Nouvelle recette…</translation>
    </message>
    <message>
        <source>&amp;Note to the last save</source>
        <translation>&amp;Note au dernier enregistrement</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>&amp;Plan and print…</source>
        <translation>&amp;Fiche et impression…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Remove stage</source>
        <translation>&amp;Retirer l'étape</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Sheet for learners…</source>
        <translation>&amp;Feuille pour apprenants…</translation>
    </message>
    <message>
        <source>&amp;Split stage at the reading line</source>
        <translation>C&amp;ouper à la ligne de lecture</translation>
    </message>
    <message>
        <source>&amp;Standardise the milk…</source>
        <translation>&amp;Standardiser le lait…</translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation>Unités &amp;américaines</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Versions…</source>
        <translation>&amp;Versions…</translation>
    </message>
    <message>
        <source>&amp;Working hours…</source>
        <translation>Heures de &amp;travail…</translation>
    </message>
    <message>
        <source>A look a&amp;round</source>
        <translation>Un t&amp;our d'horizon</translation>
    </message>
    <message>
        <source>A&amp;bout Curdwright</source>
        <translation>À &amp;propos de Curdwright</translation>
    </message>
    <message>
        <source>Another &amp;amount of milk…</source>
        <translation>Une autre &amp;quantité de lait…</translation>
    </message>
    <message>
        <source>Another &amp;milk…</source>
        <translation>Un autre &amp;lait…</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>C&amp;ut stage</source>
        <translation>Co&amp;uper l'étape (presse-papiers)</translation>
    </message>
    <message>
        <source>Decimal &amp;comma</source>
        <translation>&amp;Virgule décimale</translation>
    </message>
    <message>
        <source>Decimal &amp;point</source>
        <translation>&amp;Point décimal</translation>
    </message>
    <message>
        <source>Decimal mark of the &amp;language</source>
        <translation>Nombres selon la &amp;langue</translation>
    </message>
    <message>
        <source>English</source>
        <translation>English</translation>
    </message>
    <message>
        <source>Français</source>
        <translation>Français</translation>
    </message>
    <message>
        <source>High &amp;contrast</source>
        <translation>&amp;Contraste élevé</translation>
    </message>
    <message>
        <source>Language of the &amp;system</source>
        <translation>Langue du &amp;système</translation>
    </message>
    <message>
        <source>Later stages move along</source>
        <translation>Les étapes suivantes sont décalées</translation>
    </message>
    <message>
        <source>Look at the branch before</source>
        <translation>Voir la branche précédente</translation>
    </message>
    <message>
        <source>Look at the next &amp;branch</source>
        <translation>Voir la &amp;branche suivante</translation>
    </message>
    <message>
        <source>Made &amp;batches and their tasting…</source>
        <translation>Fabrications réalisées et &amp;dégustation…</translation>
    </message>
    <message>
        <source>Make and ageing on &amp;one scale</source>
        <translation>Fabrication et affinage à la même éc&amp;helle</translation>
    </message>
    <message>
        <source>Move stage &amp;earlier</source>
        <translation>Avancer l'étape d'un &amp;rang</translation>
    </message>
    <message>
        <source>Move stage &amp;later</source>
        <translation>&amp;Reculer l'étape d'un rang</translation>
    </message>
    <message>
        <source>Paste &amp;after the selected stage</source>
        <translation>Coller &amp;après l'étape choisie</translation>
    </message>
    <message>
        <source>Remove t&amp;he branch</source>
        <translation>Retirer la b&amp;ranche</translation>
    </message>
    <message>
        <source>Rename &amp;the branch</source>
        <translation>Renommer la branc&amp;he</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Enregistrer &amp;sous…</translation>
    </message>
    <message>
        <source>Select the &amp;next stage</source>
        <translation>Choisir l'étape &amp;suivante</translation>
    </message>
    <message>
        <source>Select the &amp;previous stage</source>
        <translation>Choisir l'étape &amp;précédente</translation>
    </message>
    <message>
        <source>Show make and a&amp;geing</source>
        <translation>Montrer fabrication et a&amp;ffinage</translation>
    </message>
    <message>
        <source>Show the &amp;make day</source>
        <translation>Montrer la &amp;journée de fabrication</translation>
    </message>
    <message>
        <source>Show the &amp;whole make</source>
        <translation>Montrer &amp;toute la fabrication</translation>
    </message>
    <message>
        <source>Show the selected &amp;stage</source>
        <translation>Montrer l'étape &amp;choisie</translation>
    </message>
    <message>
        <source>Small &amp;vats side by side…</source>
        <translation>Petites &amp;cuves côte à côte…</translation>
    </message>
    <message>
        <source>Split &amp;off part of the vat here…</source>
        <translation>Séparer ici une part de la cu&amp;ve…</translation>
    </message>
    <message>
        <source>Split stage at the reading line, else in the middle</source>
        <translation>Couper l'étape à la ligne de lecture, sinon au milieu</translation>
    </message>
    <message>
        <source>The next stage takes up the change</source>
        <translation>L'étape suivante absorbe le changement</translation>
    </message>
    <message>
        <source>Unfold &amp;firmness and salt</source>
        <translation>Déplier &amp;fermeté et sel</translation>
    </message>
    <message>
        <source>View for the &amp;projector</source>
        <translation>Vue pour le &amp;projecteur</translation>
    </message>
    <message>
        <source>What is &amp;behind it, at three depths…</source>
        <translation>Ce qu'il y a &amp;derrière, à trois profondeurs…</translation>
    </message>
    <message>
        <source>What would have to &amp;change for it to be a …?</source>
        <translation>Que faudrait-il &amp;changer pour un … ?</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Agrandir</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>&amp;Réduire</translation>
    </message>
</context>
<context>
    <name>AimForm</name>
    <message>
        <source>Apply</source>
        <translation>Appliquer</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>It is so already: {0}.</source>
        <translation>C'est déjà le cas : {0}.</translation>
    </message>
    <message>
        <source>Leave this as it is, and look for another change</source>
        <translation>Laisser ceci tel quel et chercher un autre changement</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquer</translation>
    </message>
    <message>
        <source>Lock {0}</source>
        <translation>Bloquer {0}</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Bloqué</translation>
    </message>
    <message>
        <source>Looking for the smallest change…</source>
        <translation>Recherche du plus petit changement…</translation>
    </message>
    <message>
        <source>Not reached; the nearest is {0}.</source>
        <translation>Pas atteint ; au plus près : {0}.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Voulu</translation>
    </message>
    <message>
        <source>Worse: {0}</source>
        <translation>Moins bon : {0}</translation>
    </message>
    <message>
        <source>{0} wanted</source>
        <translation>{0} : valeur voulue</translation>
    </message>
    <message>
        <source>{0} → {1} by:</source>
        <translation>{0} → {1} par :</translation>
    </message>
</context>
<context>
    <name>Axis</name>
    <message>
        <source>clock</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>day {0}</source>
        <translation>jour {0}</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>écoulé</translation>
    </message>
    <message>
        <source>midnight</source>
        <translation>minuit</translation>
    </message>
    <message>
        <source>{0} wk</source>
        <translation>{0} sem.</translation>
    </message>
</context>
<context>
    <name>BatchesPage</name>
    <message>
        <source>Batches of {0} that were liked: {1}</source>
        <translation>Fabrications de {0} appréciées : {1}</translation>
    </message>
    <message>
        <source>Day of the make</source>
        <translation>Jour de la fabrication</translation>
    </message>
    <message>
        <source>Everything here is made up, and nothing you change in it is kept.</source>
        <translation>Tout ici est inventé, et rien de ce que vous y changez n'est gardé.</translation>
    </message>
    <message>
        <source>House style from what was liked…</source>
        <translation>Style maison d'après ce qui a plu…</translation>
    </message>
    <message>
        <source>Invented batches of the example dairy</source>
        <translation>Fabrications inventées de la laiterie d'exemple</translation>
    </message>
    <message>
        <source>Last tasting</source>
        <translation>Dernière dégustation</translation>
    </message>
    <message>
        <source>Look at the invented batches of the example dairy</source>
        <translation>Voir les fabrications inventées de la laiterie d'exemple</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Fabriqué</translation>
    </message>
    <message>
        <source>Made batches</source>
        <translation>Fabrications réalisées</translation>
    </message>
    <message>
        <source>Made batches, the last first</source>
        <translation>Fabrications réalisées, la dernière d'abord</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>No batch of {0} is noted yet.</source>
        <translation>Aucune fabrication de {0} n'est encore notée.</translation>
    </message>
    <message>
        <source>Note this recipe as made</source>
        <translation>Noter cette recette comme fabriquée</translation>
    </message>
    <message>
        <source>Noted {0}; the forecast is of model {1}.</source>
        <translation>Noté le {0} ; la prévision est du modèle {1}.</translation>
    </message>
    <message>
        <source>Of all recipes</source>
        <translation>De toutes les recettes</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Recette</translation>
    </message>
    <message>
        <source>Remark on the batch</source>
        <translation>Remarque sur la fabrication</translation>
    </message>
    <message>
        <source>Take the batch back</source>
        <translation>Retirer la fabrication</translation>
    </message>
    <message>
        <source>Taste it…</source>
        <translation>Déguster…</translation>
    </message>
    <message>
        <source>Tasted</source>
        <translation>Dégusté</translation>
    </message>
    <message>
        <source>The forecast of an invented batch is of today.</source>
        <translation>La prévision d'une fabrication inventée est d'aujourd'hui.</translation>
    </message>
    <message>
        <source>What was made, measured and tasted. A correction holds from then on; nothing is erased.</source>
        <translation>Ce qui a été fabriqué, mesuré et dégusté. Une correction vaut dès lors ; rien n'est effacé.</translation>
    </message>
    <message>
        <source>When you have made a cheese, note it here: the recipe and its forecast are kept as they were. Then write in what you measured, and taste it. From the batches you liked comes a house style.</source>
        <translation>Quand vous avez fait un fromage, notez-le ici : la recette et sa prévision sont gardées telles quelles. Inscrivez ensuite ce que vous avez mesuré, et dégustez. Des fabrications qui vous ont plu naît un style maison.</translation>
    </message>
    <message>
        <source>Who made it</source>
        <translation>Qui l'a fabriqué</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} sur {1}</translation>
    </message>
    <message>
        <source>{0}, made {1}</source>
        <translation>{0}, fabriqué le {1}</translation>
    </message>
    <message>
        <source>‹ Design</source>
        <translation>‹ Dessin</translation>
    </message>
</context>
<context>
    <name>BranchForm</name>
    <message>
        <source>Add addition</source>
        <translation>Ajouter un ingrédient</translation>
    </message>
    <message>
        <source>Add addition here</source>
        <translation>Ajouter un ingrédient ici</translation>
    </message>
    <message>
        <source>Add starter</source>
        <translation>Ajouter un ferment</translation>
    </message>
    <message>
        <source>Add starter here</source>
        <translation>Ajouter un ferment ici</translation>
    </message>
    <message>
        <source>Branch: {0}</source>
        <translation>Branche : {0}</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Moule</translation>
    </message>
    <message>
        <source>Remove branch</source>
        <translation>Retirer la branche</translation>
    </message>
    <message>
        <source>Remove branch {0}</source>
        <translation>Retirer la branche {0}</translation>
    </message>
    <message>
        <source>Remove the branch {0}</source>
        <translation>Retirer la branche {0}</translation>
    </message>
    <message>
        <source>Rind or coat</source>
        <translation>Croûte ou enrobage</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>that of the recipe</source>
        <translation>celui de la recette</translation>
    </message>
</context>
<context>
    <name>BranchWork</name>
    <message>
        <source>A branch parts from the main make; select a stage of it first.</source>
        <translation>Une branche part de la fabrication principale ; choisissez-en d'abord une étape.</translation>
    </message>
    <message>
        <source>Remove branch {0}</source>
        <translation>Retirer la branche {0}</translation>
    </message>
    <message>
        <source>Split off {0}</source>
        <translation>Séparer {0}</translation>
    </message>
    <message>
        <source>The main make can't be removed; select a stage of a branch first.</source>
        <translation>La fabrication principale ne peut être retirée ; choisissez d'abord une étape d'une branche.</translation>
    </message>
    <message>
        <source>{0} forms stay with the main make, {1} go with “{2}”; doses are shared out.</source>
        <translation>{0} moules restent à la fabrication principale, {1} vont avec « {2} » ; les doses sont partagées.</translation>
    </message>
</context>
<context>
    <name>Card</name>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Take out {0}</source>
        <translation>Retirer {0}</translation>
    </message>
</context>
<context>
    <name>ChartTable</name>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Figures of the curves</source>
        <translation>Chiffres des courbes</translation>
    </message>
    <message>
        <source>Figures of the curves; Ctrl+C copies what is selected</source>
        <translation>Chiffres des courbes ; Ctrl+C copie la sélection</translation>
    </message>
    <message>
        <source>What is selected, or the whole table, for a spreadsheet</source>
        <translation>La sélection, ou tout le tableau, pour un tableur</translation>
    </message>
</context>
<context>
    <name>Check</name>
    <message>
        <source>Class of cheese</source>
        <translation>Classe de fromage</translation>
    </message>
    <message>
        <source>Limits of law and standard</source>
        <translation>Limites de la loi et des normes</translation>
    </message>
    <message>
        <source>On the curves</source>
        <translation>Sur les courbes</translation>
    </message>
    <message>
        <source>Quality windows</source>
        <translation>Plages de qualité</translation>
    </message>
    <message>
        <source>Usual settings of the make</source>
        <translation>Réglages usuels de la fabrication</translation>
    </message>
</context>
<context>
    <name>CheckPlace</name>
    <message>
        <source>Check</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>Check against the style</source>
        <translation>Contrôle selon le style</translation>
    </message>
    <message>
        <source>Choose a style at the Milk place, and the forecast is checked against it.</source>
        <translation>Choisissez un style à la place Lait, et la prévision sera contrôlée d'après lui.</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prévision</translation>
    </message>
    <message>
        <source>House style…</source>
        <translation>Style maison…</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Où l'on en est</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What would make it a …?</source>
        <translation>Que faudrait-il pour un … ?</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Plage</translation>
    </message>
</context>
<context>
    <name>Cheese</name>
    <message>
        <source>, as planned</source>
        <translation>, comme prévu</translation>
    </message>
    <message>
        <source>, {0} in 10 makes</source>
        <translation>, {0} fabrications sur 10</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Corps</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Croûte</translation>
    </message>
    <message>
        <source>Here it is {0}.</source>
        <translation>Ici, c'est {0}.</translation>
    </message>
    <message>
        <source>Knit</source>
        <translation>Soudure</translation>
    </message>
    <message>
        <source>May blow</source>
        <translation>Peut gonfler</translation>
    </message>
    <message>
        <source>Meanwhile</source>
        <translation>En attendant</translation>
    </message>
    <message>
        <source>Mend: {0}</source>
        <translation>Remède : {0}</translation>
    </message>
    <message>
        <source>The cheese is likely {0}.</source>
        <translation>Le fromage sera sans doute {0}.</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>ne convient pas</translation>
    </message>
    <message>
        <source>fairly held</source>
        <translation>assez sûr</translation>
    </message>
    <message>
        <source>look on the day: {0}</source>
        <translation>à voir le jour même : {0}</translation>
    </message>
    <message>
        <source>suits</source>
        <translation>convient</translation>
    </message>
    <message>
        <source>weakly held</source>
        <translation>peu sûr</translation>
    </message>
    <message>
        <source>well held</source>
        <translation>bien établi</translation>
    </message>
    <message>
        <source>with care</source>
        <translation>avec précaution</translation>
    </message>
    <message>
        <source>{0} to heed</source>
        <translation>{0} à surveiller</translation>
    </message>
    <message>
        <source>{0} to know</source>
        <translation>{0} à savoir</translation>
    </message>
</context>
<context>
    <name>Choices</name>
    <message>
        <source>&amp;Language and numbers</source>
        <translation>&amp;Langue et nombres</translation>
    </message>
    <message>
        <source>&amp;Lengths</source>
        <translation>&amp;Longueurs</translation>
    </message>
    <message>
        <source>&amp;Masses</source>
        <translation>&amp;Masses</translation>
    </message>
    <message>
        <source>&amp;Pressures</source>
        <translation>&amp;Pressions</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>&amp;Températures</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unités</translation>
    </message>
    <message>
        <source>&amp;Volumes</source>
        <translation>&amp;Volumes</translation>
    </message>
    <message>
        <source>This holds from the next start of the program.</source>
        <translation>Valable au prochain démarrage du programme.</translation>
    </message>
</context>
<context>
    <name>Clock</name>
    <message>
        <source>am</source>
        <translation>am</translation>
    </message>
    <message>
        <source>pm</source>
        <translation>pm</translation>
    </message>
</context>
<context>
    <name>Compare</name>
    <message>
        <source>Calcium
mg per g</source>
        <translation>Calcium
mg par g</translation>
    </message>
    <message>
        <source>FDM
points</source>
        <translation>G/S
points</translation>
    </message>
    <message>
        <source>Finish
h:min</source>
        <translation>Fin
h:min</translation>
    </message>
    <message>
        <source>Moisture
points</source>
        <translation>Humidité
points</translation>
    </message>
    <message>
        <source>S/M
points</source>
        <translation>S/H
points</translation>
    </message>
    <message>
        <source>Yield
kg</source>
        <translation>Rendement
kg</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>identique</translation>
    </message>
    <message>
        <source>curd moisture</source>
        <translation>humidité du caillé</translation>
    </message>
    <message>
        <source>pH
at 24 h</source>
        <translation>pH
à 24 h</translation>
    </message>
    <message>
        <source>pH of milk, then curd</source>
        <translation>pH du lait, puis du caillé</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>{0} changes that make sense only together</source>
        <translation>{0} changements qui n'ont de sens qu'ensemble</translation>
    </message>
</context>
<context>
    <name>ComparePlace</name>
    <message>
        <source>&amp;Take across</source>
        <translation>&amp;Reprendre</translation>
    </message>
    <message>
        <source>Back (Esc)</source>
        <translation>Retour (Échap)</translation>
    </message>
    <message>
        <source>Back to the comparison</source>
        <translation>Retour à la comparaison</translation>
    </message>
    <message>
        <source>Both makes do the same in every stage.</source>
        <translation>Les deux fabrications font la même chose à chaque étape.</translation>
    </message>
    <message>
        <source>Choose a difference to take it across into the open make.</source>
        <translation>Choisissez une différence pour la reprendre dans la fabrication ouverte.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Compare again</source>
        <translation>Comparer de nouveau</translation>
    </message>
    <message>
        <source>Doses read per 100 kg of milk.</source>
        <translation>Les doses se lisent pour 100 kg de lait.</translation>
    </message>
    <message>
        <source>First 30 hours</source>
        <translation>30 premières heures</translation>
    </message>
    <message>
        <source>How far the comparison is</source>
        <translation>Avancement de la comparaison</translation>
    </message>
    <message>
        <source>One difference: {0} ({1}).</source>
        <translation>Une différence : {0} ({1}).</translation>
    </message>
    <message>
        <source>Open a &amp;recipe…</source>
        <translation>Ouvrir une &amp;recette…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Put another make beside this one, and every difference says what it is worth in the cheese.</source>
        <translation>Mettez une autre fabrication à côté de celle-ci : chaque différence dit ce qu'elle vaut dans le fromage.</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ranger</translation>
    </message>
    <message>
        <source>S&amp;wap sides</source>
        <translation>É&amp;changer les côtés</translation>
    </message>
    <message>
        <source>Set &amp;beside</source>
        <translation>&amp;Mettre à côté</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Stopped. What stands below is not of these two makes.</source>
        <translation>Arrêté. Ce qui suit n'est pas de ces deux fabrications.</translation>
    </message>
    <message>
        <source>Taken across: {0}</source>
        <translation>Repris : {0}</translation>
    </message>
    <message>
        <source>Texture of both: {0}.</source>
        <translation>Texture des deux : {0}.</translation>
    </message>
    <message>
        <source>Texture: {0} → {1}.</source>
        <translation>Texture : {0} → {1}.</translation>
    </message>
    <message>
        <source>The comparison, as printed</source>
        <translation>La comparaison, telle qu'imprimée</translation>
    </message>
    <message>
        <source>The other one first, so that values go the other way</source>
        <translation>L'autre d'abord, pour que les valeurs aillent dans l'autre sens</translation>
    </message>
    <message>
        <source>To the press</source>
        <translation>Jusqu'à la presse</translation>
    </message>
    <message>
        <source>Working out what each difference is worth…</source>
        <translation>Calcul de ce que vaut chaque différence…</translation>
    </message>
    <message>
        <source>version {0}</source>
        <translation>version {0}</translation>
    </message>
    <message>
        <source>{0} differences. Most comes from: {1} ({2}).</source>
        <translation>{0} différences. L'essentiel vient de : {1} ({2}).</translation>
    </message>
</context>
<context>
    <name>Curves</name>
    <message>
        <source>Curves of the makes; left and right arrows read their values</source>
        <translation>Courbes des fabrications ; les flèches gauche et droite lisent leurs valeurs</translation>
    </message>
</context>
<context>
    <name>DepthsPage</name>
    <message>
        <source>1  In a sentence</source>
        <translation>1  En une phrase</translation>
    </message>
    <message>
        <source>2  For the maker</source>
        <translation>2  Pour le fabricant</translation>
    </message>
    <message>
        <source>3  The law and its source</source>
        <translation>3  La loi et sa source</translation>
    </message>
    <message>
        <source>Every outcome, setting and law in a sentence, in a paragraph, and to the bottom.</source>
        <translation>Chaque résultat, réglage et loi en une phrase, en un paragraphe, et jusqu'au fond.</translation>
    </message>
    <message>
        <source>Explanation</source>
        <translation>Explication</translation>
    </message>
    <message>
        <source>Laws</source>
        <translation>Lois</translation>
    </message>
    <message>
        <source>Nothing of that name</source>
        <translation>Rien de ce nom</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Résultats</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Search the topics</source>
        <translation>Chercher parmi les sujets</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Topics</source>
        <translation>Sujets</translation>
    </message>
    <message>
        <source>What is behind it</source>
        <translation>Ce qu'il y a derrière</translation>
    </message>
    <message>
        <source>‹ Design</source>
        <translation>‹ Dessin</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>About Curdwright</source>
        <translation>À propos de Curdwright</translation>
    </message>
    <message>
        <source>Curdwright designs the make of a cheese: what a recipe will do, how it stands against a style, and the plan to make it by. A forecast is never a certificate.</source>
        <translation>Curdwright dessine la fabrication d'un fromage : ce que fera une recette, où elle se place par rapport à un style, et la fiche pour la suivre. Une prévision n'est jamais un certificat.</translation>
    </message>
    <message>
        <source>Curdwright {0}</source>
        <translation>Curdwright {0}</translation>
    </message>
    <message>
        <source>Drag the edge of a stage to make it longer. A diamond marks a stage that ends by a state, such as a pH: drag it and you ask for another. Ctrl with the arrows goes from stage to stage.</source>
        <translation>Tirez le bord d'une étape pour l'allonger. Un losange marque une étape qui finit sur un état, comme un pH : tirez-le pour en demander un autre. Ctrl et les flèches vont d'étape en étape.</translation>
    </message>
    <message>
        <source>Each line is a figure of the cheese with its limit and margin. Open one, with a click or Enter, to see why it is so and what moves it, and to aim at the value you want.</source>
        <translation>Chaque ligne est un chiffre du fromage avec sa limite et sa marge. Ouvrez-en une, d'un clic ou par Entrée, pour voir pourquoi il en est ainsi et ce qui agit dessus, et pour viser la valeur voulue.</translation>
    </message>
    <message>
        <source>Free software under the MIT licence.</source>
        <translation>Logiciel libre, sous licence MIT.</translation>
    </message>
    <message>
        <source>Go to {0}</source>
        <translation>Aller à {0}</translation>
    </message>
    <message>
        <source>Milk and doses, the check against the style, another make beside this one, and the plan to print. Ctrl+Shift+P finds any action by its name; this look around is in the Help menu.</source>
        <translation>Lait et doses, contrôle selon le style, une autre fabrication à côté, et la fiche à imprimer. Ctrl+Maj+P trouve toute action par son nom ; ce tour d'horizon est dans le menu Aide.</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Places</translation>
    </message>
    <message>
        <source>Take up a recipe of yours, let a first one be drawn for your milk and a style, or open an example: it is a copy, so nothing can go wrong with it.</source>
        <translation>Reprenez une de vos recettes, faites-en tirer une première de votre lait et d'un style, ou ouvrez un exemple : c'est une copie, rien ne peut mal tourner.</translation>
    </message>
    <message>
        <source>The places</source>
        <translation>Les places</translation>
    </message>
    <message>
        <source>The same settings to type: “88 °F”, “1/2 in”, “31,5”. F1 on any of them looks it up.</source>
        <translation>Les mêmes réglages à taper : « 88 °F », « 1/2 in », « 31,5 ». F1 sur l'un d'eux le cherche.</translation>
    </message>
    <message>
        <source>The stage in figures</source>
        <translation>L'étape en chiffres</translation>
    </message>
    <message>
        <source>The stages</source>
        <translation>Les étapes</translation>
    </message>
    <message>
        <source>The vat, drawn through time</source>
        <translation>La cuve, dessinée dans le temps</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>Ce qui en résulte</translation>
    </message>
    <message>
        <source>What happens inside</source>
        <translation>Ce qui se passe dedans</translation>
    </message>
    <message>
        <source>Where to begin</source>
        <translation>Par où commencer</translation>
    </message>
    <message>
        <source>Width is time, the line is temperature, and under it stands what is in the vat, to scale: milk, gel, curd in its whey, cheese. Drag a round corner or a figure and the whole day answers at once.</source>
        <translation>La largeur est le temps, la ligne la température, et dessous se trouve ce qu'il y a en cuve, à l'échelle : lait, gel, caillé dans son lactosérum, fromage. Tirez un coin rond ou un chiffre, et toute la journée répond aussitôt.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenêtre</translation>
    </message>
    <message>
        <source>pH, moisture and whey on the same clock. The pale band holds 8 makes in 10. Small gates show where the style would have a curve pass.</source>
        <translation>pH, humidité et lactosérum à la même heure. La bande pâle contient 8 fabrications sur 10. De petits jalons montrent où le style ferait passer une courbe.</translation>
    </message>
</context>
<context>
    <name>Drag</name>
    <message>
        <source>That is as far as it gets before the latest moment.</source>
        <translation>Il ne va pas plus loin avant la limite de temps.</translation>
    </message>
    <message>
        <source>This end can't be followed in time; type its value instead.</source>
        <translation>Cette fin ne peut être suivie dans le temps ; tapez plutôt sa valeur.</translation>
    </message>
    <message>
        <source>{0}, was {1}</source>
        <translation>{0}, était {1}</translation>
    </message>
    <message>
        <source>{0}, was {1} ({2})</source>
        <translation>{0}, était {1} ({2})</translation>
    </message>
    <message>
        <source>“{0}” ends by a state, so later stages move along.</source>
        <translation>« {0} » finit sur un état, les étapes suivantes sont donc décalées.</translation>
    </message>
    <message>
        <source>“{0}” would be left with no time.</source>
        <translation>« {0} » n'aurait plus de durée.</translation>
    </message>
</context>
<context>
    <name>Ends</name>
    <message>
        <source>pH {0}</source>
        <translation>pH {0}</translation>
    </message>
    <message>
        <source>{0} % acid</source>
        <translation>{0} % d'acide</translation>
    </message>
    <message>
        <source>{0} % whey off</source>
        <translation>{0} % de lactosérum écoulé</translation>
    </message>
    <message>
        <source>{0} Pa</source>
        <translation>{0} Pa</translation>
    </message>
    <message>
        <source>{0} × floc</source>
        <translation>{0} × floc</translation>
    </message>
    <message>
        <source>{0}, by feel</source>
        <translation>{0}, au jugé</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>Curves of {0}</source>
        <translation>Courbes de {0}</translation>
    </message>
    <message>
        <source>Make curve of {0}</source>
        <translation>Courbe de fabrication de {0}</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>curd moisture</source>
        <translation>humidité du caillé</translation>
    </message>
    <message>
        <source>gel firmness</source>
        <translation>fermeté du gel</translation>
    </message>
    <message>
        <source>pH of milk, then curd</source>
        <translation>pH du lait, puis du caillé</translation>
    </message>
    <message>
        <source>pH of whey</source>
        <translation>pH du sérum</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>sel</translation>
    </message>
    <message>
        <source>since milk, min</source>
        <translation>depuis le lait, min</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>whey run off per 100 kg milk</source>
        <translation>sérum écoulé pour 100 kg de lait</translation>
    </message>
    <message>
        <source>{0}, 80 % band</source>
        <translation>{0}, bande à 80 %</translation>
    </message>
</context>
<context>
    <name>FileWork</name>
    <message>
        <source>Curdwright</source>
        <translation>Curdwright</translation>
    </message>
    <message>
        <source>Keep what is here</source>
        <translation>Garder ce qui est ici</translation>
    </message>
    <message>
        <source>Nothing is lost: the work is still here. It is not saved yet.</source>
        <translation>Rien n’est perdu : le travail est toujours ici. Il n’est pas encore enregistré.</translation>
    </message>
    <message>
        <source>Open recipe</source>
        <translation>Ouvrir une recette</translation>
    </message>
    <message>
        <source>Recovered work</source>
        <translation>Travail récupéré</translation>
    </message>
    <message>
        <source>Save recipe as</source>
        <translation>Enregistrer la recette sous</translation>
    </message>
    <message>
        <source>Save under another name…</source>
        <translation>Enregistrer sous un autre nom…</translation>
    </message>
    <message>
        <source>Take what stands there</source>
        <translation>Prendre ce qui s’y trouve</translation>
    </message>
    <message>
        <source>What is different there: {0}</source>
        <translation>Ce qui y est différent : {0}</translation>
    </message>
    <message>
        <source>What was changed outside</source>
        <translation>Ce qui a été modifié ailleurs</translation>
    </message>
    <message>
        <source>Writing over it would bring: {0}

What stands there now would be kept as a version.</source>
        <translation>L’écraser apporterait : {0}

Ce qui s’y trouve maintenant serait gardé comme version.</translation>
    </message>
    <message>
        <source>“{0}” has changes that are not saved.</source>
        <translation>« {0} » a des changements non enregistrés.</translation>
    </message>
    <message>
        <source>“{0}” is open in another window too. What is saved there is seen here, and before one writes over the other’s changes it asks.</source>
        <translation>« {0} » est aussi ouvert dans une autre fenêtre. Ce qui y est enregistré se voit ici, et avant que l’une écrase les modifications de l’autre, elle demande.</translation>
    </message>
    <message>
        <source>“{0}” is open in another window.</source>
        <translation>« {0} » est ouvert dans une autre fenêtre.</translation>
    </message>
    <message>
        <source>“{0}” was changed by another window or program since it was opened here.</source>
        <translation>« {0} » a été modifié par une autre fenêtre ou un autre programme depuis qu’il est ouvert ici.</translation>
    </message>
    <message>
        <source>“{0}” was changed by another window or program.</source>
        <translation>« {0} » a été modifié par une autre fenêtre ou un autre programme.</translation>
    </message>
</context>
<context>
    <name>Files</name>
    <message>
        <source>Recipes ({0})</source>
        <translation>Recettes ({0})</translation>
    </message>
</context>
<context>
    <name>Form</name>
    <message>
        <source>More settings ({0})</source>
        <translation>Autres réglages ({0})</translation>
    </message>
    <message>
        <source>This is a whole number.</source>
        <translation>C'est un nombre entier.</translation>
    </message>
    <message>
        <source>after a time</source>
        <translation>après un temps</translation>
    </message>
    <message>
        <source>at a firmness</source>
        <translation>à une fermeté</translation>
    </message>
    <message>
        <source>at a multiple of flocculation</source>
        <translation>à un multiple de floculation</translation>
    </message>
    <message>
        <source>at a pH</source>
        <translation>à un pH</translation>
    </message>
    <message>
        <source>at a temperature</source>
        <translation>à une température</translation>
    </message>
    <message>
        <source>at an acidity</source>
        <translation>à une acidité</translation>
    </message>
    <message>
        <source>by feel</source>
        <translation>au jugé</translation>
    </message>
    <message>
        <source>left open</source>
        <translation>laissé libre</translation>
    </message>
    <message>
        <source>when so much whey is off</source>
        <translation>quand tant de lactosérum est écoulé</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{1} : {0}</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} à {1}</translation>
    </message>
    <message>
        <source>{0}, step {1}</source>
        <translation>{0}, pas de {1}</translation>
    </message>
</context>
<context>
    <name>FromStyle</name>
    <message>
        <source>Drawn from the nearest example, scaled to your milk, then brought inside the style's limits.</source>
        <translation>Tirée de l'exemple le plus proche, mise à l'échelle de votre lait, puis amenée dans les limites du style.</translation>
    </message>
    <message>
        <source>Find a style</source>
        <translation>Chercher un style</translation>
    </message>
    <message>
        <source>Find a style: Cheddar, blue, goat …</source>
        <translation>Chercher un style : Cheddar, bleu, chèvre …</translation>
    </message>
    <message>
        <source>Getting ready …</source>
        <translation>Préparation …</translation>
    </message>
    <message>
        <source>Make a first recipe</source>
        <translation>Faire une première recette</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Stopped; nothing was changed.</source>
        <translation>Arrêté ; rien n'a été changé.</translation>
    </message>
    <message>
        <source>Styles</source>
        <translation>Styles</translation>
    </message>
    <message>
        <source>average of the species</source>
        <translation>moyenne de l'espèce</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>lait</translation>
    </message>
    <message>
        <source>your own style</source>
        <translation>votre propre type</translation>
    </message>
</context>
<context>
    <name>Gate</name>
    <message>
        <source>in</source>
        <translation>dedans</translation>
    </message>
    <message>
        <source>{0} above</source>
        <translation>{0} au-dessus</translation>
    </message>
    <message>
        <source>{0} below</source>
        <translation>{0} au-dessous</translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>80 % band</source>
        <translation>bande à 80 %</translation>
    </message>
    <message>
        <source>A bath of salt water the cheese lies in; salt goes in as water comes out.</source>
        <translation>Un bain d'eau salée où repose le fromage ; le sel entre à mesure que l'eau sort.</translation>
    </message>
    <message>
        <source>A curve that says how fast a microbe grows at any warmth, from the coldest, best and hottest it can bear.</source>
        <translation>Une courbe qui dit à quelle vitesse un microbe pousse à toute température, de la plus froide à la plus chaude qu'il supporte en passant par la meilleure.</translation>
    </message>
    <message>
        <source>A dry skin on curd that was heated too fast, which then keeps the whey inside.</source>
        <translation>Une peau sèche sur un caillé chauffé trop vite, qui retient alors le lactosérum.</translation>
    </message>
    <message>
        <source>A figure of a law or standard a cheese must keep to carry a name.</source>
        <translation>Un chiffre d'une loi ou d'une norme qu'un fromage doit tenir pour porter un nom.</translation>
    </message>
    <message>
        <source>A gel made by acid alone, or by acid with very little rennet, over many hours.</source>
        <translation>Un gel fait par l'acide seul, ou par l'acide avec très peu de présure, en de longues heures.</translation>
    </message>
    <message>
        <source>A knit that is not closed leaves crevices, and mould grows into every one of them: such a wheel keeps better sealed, if it is dry, acid and salt enough and kept cold.</source>
        <translation>Une soudure qui n'est pas fermée laisse des crevasses, et la moisissure pousse dans chacune : une telle meule se garde mieux scellée, si elle est assez sèche, acide et salée et gardée au froid.</translation>
    </message>
    <message>
        <source>A moist cheese yields more because it holds water. To see whether casein and fat were kept, compare at the same moisture.</source>
        <translation>Un fromage humide rend plus parce qu'il tient de l'eau. Pour voir si caséine et matière grasse ont été retenues, comparez à humidité égale.</translation>
    </message>
    <message>
        <source>A number in a law of the model, with its unit, the range it may honestly have, its source and how we have it.</source>
        <translation>Un nombre d'une loi du modèle, avec son unité, la plage qu'il peut honnêtement avoir, sa source et comment nous l'avons.</translation>
    </message>
    <message>
        <source>A part of the make curve that can be dragged or moved with the arrow keys: an edge, a corner, a round figure.</source>
        <translation>Une partie de la courbe de fabrication que l'on peut tirer ou déplacer aux flèches : un bord, un coin, un chiffre rond.</translation>
    </message>
    <message>
        <source>A plant dye from the seed coat of a tropical shrub, which makes cheese yellow to orange and changes nothing else.</source>
        <translation>Une teinture végétale tirée de l'enveloppe des graines d'un arbuste tropical, qui rend le fromage jaune à orangé et ne change rien d'autre.</translation>
    </message>
    <message>
        <source>A published relation the model uses, named after what it gives, who wrote it and when; outside the range it was measured in, the forecast says so.</source>
        <translation>Une relation publiée que le modèle emploie, nommée d'après ce qu'elle donne, qui l'a écrite et quand ; hors de la plage où elle a été mesurée, la prévision le dit.</translation>
    </message>
    <message>
        <source>A rind of white mould that grows in days and softens the paste below it from the outside in.</source>
        <translation>Une croûte de moisissure blanche qui pousse en quelques jours et affine la pâte de l'extérieur vers le cœur.</translation>
    </message>
    <message>
        <source>A rind washed with brine so that orange bacteria grow on it and ripen the cheese from outside.</source>
        <translation>Une croûte lavée à la saumure pour que des bactéries orangées y poussent et affinent le fromage de l'extérieur.</translation>
    </message>
    <message>
        <source>A salt given to milk that sets poorly, often after pasteurising or cold storage; it gives a faster and firmer set.</source>
        <translation>Un sel donné à un lait qui caille mal, souvent après pasteurisation ou garde au froid ; il donne un caillage plus rapide et plus ferme.</translation>
    </message>
    <message>
        <source>A sentence where the make leaves what is commonly held safe or sound; no caution does not mean no danger.</source>
        <translation>Une phrase là où la fabrication quitte ce qu'on tient pour sûr ou sain ; l'absence de mise en garde n'est pas l'absence de danger.</translation>
    </message>
    <message>
        <source>A setting with its effect on an outcome for one natural step either way.</source>
        <translation>Un réglage avec son effet sur un résultat pour un pas naturel dans chaque sens.</translation>
    </message>
    <message>
        <source>A share of curd, whey or cream that leaves the main make after a stage and becomes a cheese of its own.</source>
        <translation>Une part de caillé, de lactosérum ou de crème qui quitte la fabrication principale après une étape et devient son propre fromage.</translation>
    </message>
    <message>
        <source>A starter grown on milk in the dairy and given as a liquid, already acid and awake.</source>
        <translation>Un ferment cultivé sur lait à la laiterie et donné liquide, déjà acide et éveillé.</translation>
    </message>
    <message>
        <source>A starter that likes about blood warmth and below; it is killed or stopped by a hot cook.</source>
        <translation>Un ferment qui aime la tiédeur et moins ; une forte cuisson le tue ou l'arrête.</translation>
    </message>
    <message>
        <source>A starter that likes heat and bears a hot cook: round cells and rods of the yoghurt and alpine kind.</source>
        <translation>Un ferment qui aime la chaleur et supporte une forte cuisson : coques et bâtonnets du genre du yaourt et des fromages d'alpage.</translation>
    </message>
    <message>
        <source>A style of your own, with your limits and ranges, kept as a file beside your recipes.</source>
        <translation>Un style à vous, avec vos limites et vos plages, gardé en fichier à côté de vos recettes.</translation>
    </message>
    <message>
        <source>A window of the style drawn on a curve, at the moment it applies: what the pH should be when the whey is drawn, say.</source>
        <translation>Une plage du style dessinée sur une courbe, au moment où elle vaut : par exemple ce que doit être le pH au soutirage.</translation>
    </message>
    <message>
        <source>About 2 to 3 for hard cheeses and 4 to 6 for soft ones is common practice; each style says its own window.</source>
        <translation>Environ 2 à 3 pour les fromages durs et 4 à 6 pour les mous, c'est l'usage courant ; chaque style dit sa propre plage.</translation>
    </message>
    <message>
        <source>Acid curd</source>
        <translation>Caillé acide</translation>
    </message>
    <message>
        <source>Acidity</source>
        <translation>Acidité</translation>
    </message>
    <message>
        <source>Additions</source>
        <translation>Ajouts</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Aim</source>
        <translation>Viser</translation>
    </message>
    <message>
        <source>All that is not water.</source>
        <translation>Tout ce qui n'est pas de l'eau.</translation>
    </message>
    <message>
        <source>An end by state has a latest time too. If the state is not reached by then, the forecast says so and goes on.</source>
        <translation>Une fin sur un état a aussi une limite de temps. Si l'état n'est pas atteint d'ici là, la prévision le dit et continue.</translation>
    </message>
    <message>
        <source>Annatto</source>
        <translation>Rocou</translation>
    </message>
    <message>
        <source>Ash</source>
        <translation>Cendres</translation>
    </message>
    <message>
        <source>Bacteria given to the milk to turn its sugar into lactic acid.</source>
        <translation>Bactéries données au lait pour changer son sucre en acide lactique.</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Bande</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot de fabrication</translation>
    </message>
    <message>
        <source>Bloomy rind</source>
        <translation>Croûte fleurie</translation>
    </message>
    <message>
        <source>Branch</source>
        <translation>Branche</translation>
    </message>
    <message>
        <source>Brine</source>
        <translation>Saumure</translation>
    </message>
    <message>
        <source>Buffering</source>
        <translation>Pouvoir tampon</translation>
    </message>
    <message>
        <source>Butterfat; in milk it swims as droplets, in cheese it fills the pores between the casein.</source>
        <translation>La matière grasse du lait ; elle y nage en gouttelettes, et remplit dans le fromage les pores de la caséine.</translation>
    </message>
    <message>
        <source>CTMI</source>
        <translation>CTMI</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcium</translation>
    </message>
    <message>
        <source>Calcium chloride</source>
        <translation>Chlorure de calcium</translation>
    </message>
    <message>
        <source>Case hardening</source>
        <translation>Coiffage du grain</translation>
    </message>
    <message>
        <source>Casein</source>
        <translation>Caséine</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Mise en garde</translation>
    </message>
    <message>
        <source>Cheddaring</source>
        <translation>Cheddarisation</translation>
    </message>
    <message>
        <source>Clean break</source>
        <translation>Cassure nette</translation>
    </message>
    <message>
        <source>Coagulant</source>
        <translation>Coagulant</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Enrobage</translation>
    </message>
    <message>
        <source>Codex CXS 283-1978 sorts cheeses by moisture on a fat-free basis</source>
        <translation>Le Codex CXS 283-1978 classe les fromages par l'humidité du fromage dégraissé</translation>
    </message>
    <message>
        <source>Common salt: it slows the starter, draws out whey, firms the rind and gives taste.</source>
        <translation>Sel de cuisine : il ralentit le ferment, tire le lactosérum, affermit la croûte et donne du goût.</translation>
    </message>
    <message>
        <source>Constant</source>
        <translation>Constante</translation>
    </message>
    <message>
        <source>Cook</source>
        <translation>Chauffage du caillé</translation>
    </message>
    <message>
        <source>Cool water also keeps the curd moist; hot water cooks it.</source>
        <translation>L'eau fraîche garde aussi le caillé humide ; l'eau chaude le cuit.</translation>
    </message>
    <message>
        <source>Culture</source>
        <translation>Culture</translation>
    </message>
    <message>
        <source>Curd</source>
        <translation>Caillé</translation>
    </message>
    <message>
        <source>Curd pulling itself together and pushing its whey out.</source>
        <translation>Le caillé qui se resserre et chasse son lactosérum.</translation>
    </message>
    <message>
        <source>Curd size</source>
        <translation>Taille du grain</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Égouttage</translation>
    </message>
    <message>
        <source>Drawn in the same frame</source>
        <translation>Dessiné dans la même image</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Extrait sec</translation>
    </message>
    <message>
        <source>End of a stage</source>
        <translation>Fin d'une étape</translation>
    </message>
    <message>
        <source>Everything that changes the milk or the rennet shows in this time, so a maker who counts from it cuts at the same firmness on every day.</source>
        <translation>Tout ce qui change le lait ou la présure se voit dans ce temps ; qui compte à partir de lui décaille à la même fermeté tous les jours.</translation>
    </message>
    <message>
        <source>Eyes</source>
        <translation>Ouvertures</translation>
    </message>
    <message>
        <source>FDM</source>
        <translation>G/S</translation>
    </message>
    <message>
        <source>FIDM</source>
        <translation>FIDM</translation>
    </message>
    <message>
        <source>Fat</source>
        <translation>Matière grasse</translation>
    </message>
    <message>
        <source>Fat in dry matter</source>
        <translation>Gras sur sec</translation>
    </message>
    <message>
        <source>Firmness</source>
        <translation>Fermeté</translation>
    </message>
    <message>
        <source>Flocculation</source>
        <translation>Floculation</translation>
    </message>
    <message>
        <source>Flocculation multiple</source>
        <translation>Multiple de floculation</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prévision</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Moule</translation>
    </message>
    <message>
        <source>Fresh milk already takes some, because its protein and phosphate buffer. The rise over the fresh milk is what the starter made.</source>
        <translation>Un lait frais en prend déjà, car ses protéines et son phosphate tamponnent. La hausse par rapport au lait frais est ce que le ferment a fait.</translation>
    </message>
    <message>
        <source>Gate</source>
        <translation>Jalon</translation>
    </message>
    <message>
        <source>Gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Poignée</translation>
    </message>
    <message>
        <source>Heal</source>
        <translation>Repos du grain</translation>
    </message>
    <message>
        <source>House style</source>
        <translation>Style maison</translation>
    </message>
    <message>
        <source>How acid milk, whey or curd is: 7 is neutral, and each whole step down is ten times as acid.</source>
        <translation>À quel point lait, lactosérum ou caillé est acide : 7 est neutre, et chaque unité plus bas est dix fois plus acide.</translation>
    </message>
    <message>
        <source>How far a forecast lies inside or outside a limit, in the limit's own unit.</source>
        <translation>De combien une prévision est dans une limite ou hors d'elle, dans l'unité de la limite.</translation>
    </message>
    <message>
        <source>How hard the gel resists before it is cut, as a stress.</source>
        <translation>La résistance du gel avant le décaillage, en contrainte.</translation>
    </message>
    <message>
        <source>How much alkali it takes to neutralise a sample of milk or whey; it counts acid where pH tells how strong it is.</source>
        <translation>Combien d'alcali neutralise un échantillon de lait ou de lactosérum ; elle compte l'acide là où le pH dit sa force.</translation>
    </message>
    <message>
        <source>How much of the water is free for microbes to use; salt and drying lower it.</source>
        <translation>Quelle part de l'eau est libre pour les microbes ; le sel et le séchage la baissent.</translation>
    </message>
    <message>
        <source>How the forecast stands against the limits of the rule sets chosen.</source>
        <translation>Où se place la prévision par rapport aux limites des jeux de règles choisis.</translation>
    </message>
    <message>
        <source>How well the pieces of curd have grown together in the press.</source>
        <translation>À quel point les grains de caillé se sont soudés sous la presse.</translation>
    </message>
    <message>
        <source>IMCU</source>
        <translation>IMCU</translation>
    </message>
    <message>
        <source>ISO 11815</source>
        <translation>ISO 11815</translation>
    </message>
    <message>
        <source>Inside with room to spare, close to the edge, outside: always said of the forecast, never of the cheese.</source>
        <translation>Dedans avec de la marge, près du bord, dehors : toujours dit de la prévision, jamais du fromage.</translation>
    </message>
    <message>
        <source>It is decided by the milk: by its fat against its casein, and by how much fat is lost in the whey. Change it with cream or skim.</source>
        <translation>C'est le lait qui le décide : sa matière grasse par rapport à sa caséine, et ce qui s'en perd dans le lactosérum. Changez-le par la crème ou le lait écrémé.</translation>
    </message>
    <message>
        <source>It is fragile, low in calcium and lets go of its whey slowly; it is ladled or hung rather than cut and cooked. Most fresh goat cheeses begin so.</source>
        <translation>Il est fragile, pauvre en calcium et rend lentement son lactosérum ; on le moule à la louche ou on le suspend plutôt que de le découper et le cuire. La plupart des fromages frais de chèvre commencent ainsi.</translation>
    </message>
    <message>
        <source>It is made by working the same recipe many times with its unknowns drawn from their honest ranges. Measure more of your milk and it grows narrow.</source>
        <translation>Elle se fait en calculant la même recette bien des fois, ses inconnues tirées de leurs plages honnêtes. Mesurez mieux votre lait et elle se resserre.</translation>
    </message>
    <message>
        <source>It is won or lost between cut and press: by the size of the cut, the warmth, the acid, the handling and the time.</source>
        <translation>Elle se gagne ou se perd entre décaillage et presse : par la taille du grain, la chaleur, l'acide, le travail et le temps.</translation>
    </message>
    <message>
        <source>It leaves with the whey, and acid sets it free; so the pH at which the whey is drawn decides how much remains. That is why an early draw makes a cheese that bends and a late one a cheese that crumbles.</source>
        <translation>Il part avec le lactosérum, et l'acide le libère ; le pH au soutirage décide donc combien il en reste. C'est pourquoi un soutirage précoce fait un fromage qui plie, et un tardif un fromage qui s'effrite.</translation>
    </message>
    <message>
        <source>It only works when enough calcium has left the casein and not too much: a narrow window of pH.</source>
        <translation>Cela ne va que si assez de calcium a quitté la caséine, et pas trop : une étroite plage de pH.</translation>
    </message>
    <message>
        <source>Keeping a cheese for sixty days does not make it safe: some of what makes people ill outlives that.</source>
        <translation>Garder un fromage soixante jours ne le rend pas sûr : une part de ce qui rend malade y survit.</translation>
    </message>
    <message>
        <source>Kilograms of cheese from 100 kg of milk.</source>
        <translation>Kilogrammes de fromage de 100 kg de lait.</translation>
    </message>
    <message>
        <source>Kinds differ in how they answer to warmth and acid and in how much they go on working in the cheese, where a plant coagulant may turn an old cheese bitter.</source>
        <translation>Les genres diffèrent par leur réponse à la chaleur et à l'acide et par ce qu'ils continuent de faire dans le fromage, où un coagulant végétal peut rendre amer un vieux fromage.</translation>
    </message>
    <message>
        <source>Kneading acid curd in hot water until it pulls into threads.</source>
        <translation>Pétrir du caillé acide dans l'eau chaude jusqu'à ce qu'il file.</translation>
    </message>
    <message>
        <source>Knit</source>
        <translation>Soudure</translation>
    </message>
    <message>
        <source>Lactic acid</source>
        <translation>Acide lactique</translation>
    </message>
    <message>
        <source>Lactose</source>
        <translation>Lactose</translation>
    </message>
    <message>
        <source>Lag</source>
        <translation>Temps de latence</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Limite de temps</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Loi</translation>
    </message>
    <message>
        <source>Leaving fresh cut curd alone so that its faces close and little fat is lost.</source>
        <translation>Laisser tranquille le caillé frais découpé pour que ses faces se ferment et que peu de matière grasse se perde.</translation>
    </message>
    <message>
        <source>Letting stirred curd sink and mat under its whey.</source>
        <translation>Laisser le caillé brassé tomber et se rassembler sous son lactosérum.</translation>
    </message>
    <message>
        <source>Lever</source>
        <translation>Levier</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Living cells in a gram of dried or frozen culture.</source>
        <translation>Cellules vivantes dans un gramme de ferment sec ou congelé.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Load divided by the area it rests on; two wheels stacked under one load both feel all of it.</source>
        <translation>La charge divisée par la surface où elle repose ; deux meules empilées sous une charge la sentent toutes deux en entier.</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>MNFS</source>
        <translation>HFD</translation>
    </message>
    <message>
        <source>Make curve</source>
        <translation>Courbe de fabrication</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Marge</translation>
    </message>
    <message>
        <source>Mesophilic</source>
        <translation>Mésophile</translation>
    </message>
    <message>
        <source>Met, near, not met</source>
        <translation>Respecté, limite, non respecté</translation>
    </message>
    <message>
        <source>Milk that has set.</source>
        <translation>Du lait qui a caillé.</translation>
    </message>
    <message>
        <source>Milk that was not heated; what lives in it may work for you or against you.</source>
        <translation>Un lait non chauffé ; ce qui y vit peut travailler pour vous ou contre vous.</translation>
    </message>
    <message>
        <source>Milk without its cream.</source>
        <translation>Le lait sans sa crème.</translation>
    </message>
    <message>
        <source>Mill</source>
        <translation>Broyage</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Most of it is protein and calcium phosphate. Where much of the phosphate has left with the whey, the same lactic acid takes the pH lower.</source>
        <translation>C'est surtout des protéines et du phosphate de calcium. Où beaucoup de phosphate est parti avec le lactosérum, le même acide lactique descend le pH plus bas.</translation>
    </message>
    <message>
        <source>Mother culture</source>
        <translation>Levain mère</translation>
    </message>
    <message>
        <source>Moving curd in its whey so that the pieces stay apart and dry evenly.</source>
        <translation>Mouvoir le caillé dans son lactosérum pour que les grains restent séparés et sèchent également.</translation>
    </message>
    <message>
        <source>Natural step</source>
        <translation>Pas naturel</translation>
    </message>
    <message>
        <source>One delivery of an ingredient with its own number, to be traced back to.</source>
        <translation>Une livraison d'un ingrédient avec son propre numéro, pour en retrouver l'origine.</translation>
    </message>
    <message>
        <source>One piece of cheese, whatever its shape.</source>
        <translation>Un fromage, quelle que soit sa forme.</translation>
    </message>
    <message>
        <source>One step of the make with a beginning, an end and its own settings.</source>
        <translation>Un pas de la fabrication avec un début, une fin et ses propres réglages.</translation>
    </message>
    <message>
        <source>One vat of cheese made on one day from one recipe.</source>
        <translation>Une cuve de fromage faite un jour d'une recette.</translation>
    </message>
    <message>
        <source>Only the legal pairs are looked up. Nothing is ever called equivalent because a sum says so.</source>
        <translation>Seuls les couples légaux sont consultés. Rien n'est jamais dit équivalent parce qu'un calcul le dit.</translation>
    </message>
    <message>
        <source>Open an outcome to see its levers, the strongest first. Point at one and the curves show it; press it and it is done, as one step of undo.</source>
        <translation>Ouvrez un résultat pour voir ses leviers, le plus fort d'abord. Pointez-en un et les courbes le montrent ; pressez-le et c'est fait, en un pas d'annulation.</translation>
    </message>
    <message>
        <source>Pasteurise</source>
        <translation>Pasteuriser</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Fiche</translation>
    </message>
    <message>
        <source>Potency</source>
        <translation>Concentration</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Pressage</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pression</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Aperçu</translation>
    </message>
    <message>
        <source>Protein to fat</source>
        <translation>Protéines sur matière grasse</translation>
    </message>
    <message>
        <source>Raw milk</source>
        <translation>Lait cru</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Secours</translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation>Maturation</translation>
    </message>
    <message>
        <source>Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447</source>
        <translation>Rosso, Lobry et Flandrois 1993, J. Theor. Biol. 162:447</translation>
    </message>
    <message>
        <source>Round holes made by gas of bacteria in a paste that bends rather than cracks.</source>
        <translation>Trous ronds faits par le gaz de bactéries dans une pâte qui plie plutôt qu'elle ne se fend.</translation>
    </message>
    <message>
        <source>Rule set</source>
        <translation>Jeu de règles</translation>
    </message>
    <message>
        <source>Running the whey off the curd.</source>
        <translation>Laisser couler le lactosérum du caillé.</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Salt as a share of the water of a cheese; the strength of the brine that its microbes and enzymes live in.</source>
        <translation>Le sel en part de l'eau d'un fromage ; la force de la saumure où vivent ses microbes et ses enzymes.</translation>
    </message>
    <message>
        <source>Salt in moisture</source>
        <translation>Sel sur humidité</translation>
    </message>
    <message>
        <source>Say of what: curd lies a little under the whey that stands over it. The pH at draining and at the end shape a cheese more than any other figure.</source>
        <translation>Dites sur quoi : le caillé est un peu au-dessous du lactosérum qui le couvre. Le pH au soutirage et à la fin façonne un fromage plus que tout autre chiffre.</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Caillage</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Dépôt sous lactosérum</translation>
    </message>
    <message>
        <source>Skim</source>
        <translation>Lait écrémé</translation>
    </message>
    <message>
        <source>Smear</source>
        <translation>Morge</translation>
    </message>
    <message>
        <source>Squeezing curd in forms so that it knits and loses its last free whey.</source>
        <translation>Presser le caillé en moules pour qu'il se soude et perde son dernier lactosérum libre.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Stir</source>
        <translation>Brassage</translation>
    </message>
    <message>
        <source>Stretch</source>
        <translation>Filage</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Style</translation>
    </message>
    <message>
        <source>Syneresis</source>
        <translation>Synérèse</translation>
    </message>
    <message>
        <source>TA</source>
        <translation>AT</translation>
    </message>
    <message>
        <source>Taking out whey and putting in water, so that less sugar is left for acid and the cheese stays mild.</source>
        <translation>Tirer du lactosérum et mettre de l'eau, pour qu'il reste moins de sucre à l'acide et que le fromage reste doux : le délactosage.</translation>
    </message>
    <message>
        <source>Tearing stacked curd into pieces so that it can be salted evenly.</source>
        <translation>Déchirer le caillé cheddarisé en morceaux pour le saler également.</translation>
    </message>
    <message>
        <source>The acid that starter bacteria make from milk sugar.</source>
        <translation>L'acide que les bactéries du ferment font du sucre du lait.</translation>
    </message>
    <message>
        <source>The change a maker would make of a setting: half a degree, five minutes, a tenth of pH.</source>
        <translation>Le changement qu'un fabricant ferait d'un réglage : un demi-degré, cinq minutes, un dixième de pH.</translation>
    </message>
    <message>
        <source>The cut of a gel that splits with sharp edges and clear whey when a blade is lifted under it: firm enough to cut.</source>
        <translation>La coupe d'un gel qui se fend à arêtes vives et lactosérum clair quand on soulève une lame dessous : assez ferme pour décailler.</translation>
    </message>
    <message>
        <source>The edge of the pieces the gel is cut into; small pieces lose their whey faster.</source>
        <translation>L'arête des grains où le gel est découpé ; les petits perdent plus vite leur lactosérum.</translation>
    </message>
    <message>
        <source>The enzyme that cuts the hairs off the casein so that it clumps to a gel: from calves, moulds, plants or fermentation.</source>
        <translation>L'enzyme qui coupe les poils de la caséine pour qu'elle s'assemble en gel : de veau, de moisissure, de plante ou de fermentation.</translation>
    </message>
    <message>
        <source>The gel after it is cut: casein with fat and whey in its pores.</source>
        <translation>Le gel une fois découpé : la caséine avec matière grasse et lactosérum dans ses pores.</translation>
    </message>
    <message>
        <source>The limits of one law or standard; choose which ones the forecast is held against.</source>
        <translation>Les limites d'une loi ou d'une norme ; choisissez celles auxquelles la prévision est comparée.</translation>
    </message>
    <message>
        <source>The longest a stage may wait for the state that ends it.</source>
        <translation>Le plus longtemps qu'une étape peut attendre l'état qui la finit.</translation>
    </message>
    <message>
        <source>The mineral that ties the casein together: the more is left in the curd, the firmer and more elastic the cheese.</source>
        <translation>Le minéral qui lie la caséine : plus il en reste dans le caillé, plus le fromage est ferme et élastique.</translation>
    </message>
    <message>
        <source>The minerals that stay when everything else is burnt away; calcium and phosphate make most of it, and salt once it is added.</source>
        <translation>Les minéraux qui restent quand tout le reste a brûlé ; surtout calcium et phosphate, et le sel une fois ajouté.</translation>
    </message>
    <message>
        <source>The moment the milk first thickens after rennet: a bowl that spun on it stands still.</source>
        <translation>Le moment où le lait épaissit d'abord après la présure : un bol qui y tournait s'arrête.</translation>
    </message>
    <message>
        <source>The pH a day after the starter went in; by then most makes have come to rest.</source>
        <translation>Le pH un jour après le ferment ; la plupart des fabrications sont alors au repos.</translation>
    </message>
    <message>
        <source>The pH at that moment decides how much calcium, and how much sugar for later acid, stays with the curd.</source>
        <translation>Le pH à ce moment décide combien de calcium, et de sucre pour l'acide à venir, reste dans le caillé.</translation>
    </message>
    <message>
        <source>The part of the milk protein that makes the gel; nearly all of it becomes cheese.</source>
        <translation>La part des protéines du lait qui fait le gel ; presque toute devient fromage.</translation>
    </message>
    <message>
        <source>The protein that stays dissolved and leaves with the whey, unless milk was heated hard.</source>
        <translation>La protéine qui reste dissoute et part avec le lactosérum, sauf si le lait a été fortement chauffé.</translation>
    </message>
    <message>
        <source>The range a style usually keeps, for a setting or a figure; a range, never one number.</source>
        <translation>La plage qu'un style tient d'habitude, pour un réglage ou un chiffre ; une plage, jamais un seul nombre.</translation>
    </message>
    <message>
        <source>The ratio in the milk that decides fat in dry matter; it is set by adding skim or taking cream.</source>
        <translation>Le rapport du lait qui décide du gras sur sec ; on le règle en ajoutant du lait écrémé ou en ôtant de la crème.</translation>
    </message>
    <message>
        <source>The salt enters by the surface, so a thick wheel takes much longer than a thin one. Keep its strength, its calcium and its pH near those of the cheese, or the rind turns slimy or hard.</source>
        <translation>Le sel entre par la surface, une meule épaisse demande donc bien plus longtemps qu'une mince. Tenez sa force, son calcium et son pH près de ceux du fromage, sinon la croûte devient gluante ou dure.</translation>
    </message>
    <message>
        <source>The search for the smallest natural change of the recipe that brings an outcome where you want it.</source>
        <translation>La recherche du plus petit changement naturel de la recette qui amène un résultat où vous le voulez.</translation>
    </message>
    <message>
        <source>The share of a milk's fat or casein that ends in the cheese and not in the whey.</source>
        <translation>La part de la matière grasse ou de la caséine d'un lait qui finit dans le fromage et non dans le lactosérum.</translation>
    </message>
    <message>
        <source>The share of fat in all that is not water; it hardly changes as a cheese dries, so standards like to name it.</source>
        <translation>La part de matière grasse dans tout ce qui n'est pas de l'eau ; elle change à peine quand un fromage sèche, les normes aiment donc la nommer.</translation>
    </message>
    <message>
        <source>The share of water in all that is not fat: it tells how soft a cheese is better than its moisture does.</source>
        <translation>La part d'eau dans tout ce qui n'est pas matière grasse : elle dit mieux que l'humidité si un fromage est mou.</translation>
    </message>
    <message>
        <source>The share of water in the cheese by weight.</source>
        <translation>La part d'eau du fromage en poids.</translation>
    </message>
    <message>
        <source>The sheet for the vat side: what to weigh out, every stage by the clock with its target, and blanks for what you measure.</source>
        <translation>La feuille pour le bord de la cuve : ce qu'il faut peser, chaque étape à l'heure avec sa cible, et des blancs pour ce que vous mesurez.</translation>
    </message>
    <message>
        <source>The short bar at the end of a stage that shows how early or late that end may come.</source>
        <translation>Le trait court à la fin d'une étape qui montre combien tôt ou tard cette fin peut venir.</translation>
    </message>
    <message>
        <source>The span in which eight makes in ten are forecast to lie, given how uncertain milk, starter, thermometer and model are.</source>
        <translation>L'intervalle où huit fabrications sur dix sont prévues, vu l'incertitude du lait, du ferment, du thermomètre et du modèle.</translation>
    </message>
    <message>
        <source>The stage from rennet to cut in which milk becomes a gel.</source>
        <translation>L'étape de la présure au décaillage où le lait devient un gel.</translation>
    </message>
    <message>
        <source>The sugar of milk; what is left in the curd after draining sets how far the acid can go.</source>
        <translation>Le sucre du lait ; ce qui en reste dans le caillé après l'égouttage fixe jusqu'où l'acide peut aller.</translation>
    </message>
    <message>
        <source>The thin line that shows where a curve ran before your last change.</source>
        <translation>La ligne fine qui montre où passait une courbe avant votre dernier changement.</translation>
    </message>
    <message>
        <source>The time a culture needs to wake and adjust before it grows; long for dried cultures, short for a fresh one.</source>
        <translation>Le temps qu'il faut à un ferment pour s'éveiller et s'adapter avant de pousser ; long pour les secs, court pour un frais.</translation>
    </message>
    <message>
        <source>The time in the store in which enzymes take protein, fat and the rest of the sugar apart and make flavour and body.</source>
        <translation>Le temps en cave où les enzymes défont protéines, matière grasse et reste de sucre et font le goût et la pâte.</translation>
    </message>
    <message>
        <source>The time the starter has in the milk before the rennet goes in.</source>
        <translation>Le temps qu'a le ferment dans le lait avant l'emprésurage.</translation>
    </message>
    <message>
        <source>The unit of rennet strength: the label says how many are in a millilitre, and strength times dose is what counts.</source>
        <translation>L'unité de force de la présure : l'étiquette dit combien il y en a dans un millilitre, et force fois dose est ce qui compte.</translation>
    </message>
    <message>
        <source>The vat drawn through time: how warm it is, and to scale what is in it, stage by stage.</source>
        <translation>La cuve dessinée dans le temps : sa chaleur, et à l'échelle ce qu'elle contient, étape par étape.</translation>
    </message>
    <message>
        <source>The vessel with holes that gives the cheese its shape.</source>
        <translation>Le récipient percé qui donne sa forme au fromage.</translation>
    </message>
    <message>
        <source>The warmer, the drier, but each starter has a warmth above which it rests or dies. Cooking early dries more than cooking late, because acid and handling do the rest.</source>
        <translation>Plus c'est chaud, plus c'est sec, mais chaque ferment a une chaleur au-dessus de laquelle il s'arrête ou meurt. Chauffer tôt sèche plus que chauffer tard, car l'acide et le travail font le reste.</translation>
    </message>
    <message>
        <source>The way milk, whey and curd soak up acid before their pH moves.</source>
        <translation>La façon dont lait, lactosérum et caillé absorbent l'acide avant que leur pH bouge.</translation>
    </message>
    <message>
        <source>The weight on the follower after the lever, in kilograms; what the curd feels is the pressure.</source>
        <translation>Le poids sur le plateau après le levier, en kilogrammes ; ce que sent le caillé est la pression.</translation>
    </message>
    <message>
        <source>Thermophilic</source>
        <translation>Thermophile</translation>
    </message>
    <message>
        <source>Three temperatures and one rate describe a whole strain; that is why we use it for starters.</source>
        <translation>Trois températures et une vitesse décrivent toute une souche ; c'est pourquoi nous l'employons pour les ferments.</translation>
    </message>
    <message>
        <source>Time from rennet to cut divided by time to flocculation; small makes a dry cheese, large a moist one.</source>
        <translation>Le temps de la présure au décaillage divisé par le temps de floculation ; petit, il fait un fromage sec, grand, un humide.</translation>
    </message>
    <message>
        <source>To hold milk at a warmth for a time long enough to kill what makes people ill; the law names the pairs that count.</source>
        <translation>Tenir le lait à une chaleur assez longtemps pour tuer ce qui rend malade ; la loi nomme les couples qui comptent.</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Trace</translation>
    </message>
    <message>
        <source>Turning and piling slabs of warm drained curd while acid forms, until they are fibrous and ready to mill.</source>
        <translation>Retourner et empiler des pains de caillé égoutté et chaud pendant que l'acide se forme, jusqu'à ce qu'ils soient fibreux et bons à broyer.</translation>
    </message>
    <message>
        <source>Type the value you want into an opened outcome. What you lock stays; what gets worse on the way is said before you take it.</source>
        <translation>Tapez la valeur voulue dans un résultat ouvert. Ce que vous bloquez reste ; ce qui empire en chemin est dit avant que vous le preniez.</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Warm slowly while the pieces are soft; once the skin has closed, more heat dries the outside only.</source>
        <translation>Chauffez lentement tant que les grains sont mous ; une fois la peau fermée, plus de chaleur ne sèche que le dehors.</translation>
    </message>
    <message>
        <source>Warm, moist and not too acid curd knits; cold, dry or salted curd leaves gaps. Pressing hard too early closes the skin and keeps whey inside.</source>
        <translation>Un caillé chaud, humide et pas trop acide se soude ; froid, sec ou salé, il laisse des vides. Presser trop fort trop tôt ferme la peau et retient le lactosérum.</translation>
    </message>
    <message>
        <source>Warming curd in its whey so that it shrinks and lets go of whey faster.</source>
        <translation>Chauffer le caillé dans son lactosérum pour qu'il se contracte et le rende plus vite.</translation>
    </message>
    <message>
        <source>Warmth, acid, small pieces and movement speed it; fat, a firm late cut and cold slow it. It is most of what a maker steers.</source>
        <translation>La chaleur, l'acide, de petits grains et le mouvement la hâtent ; la matière grasse, un décaillage ferme et tardif et le froid la ralentissent. C'est l'essentiel de ce que mène un fabricant.</translation>
    </message>
    <message>
        <source>Wash curd</source>
        <translation>Délactosage</translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation>Activité de l'eau</translation>
    </message>
    <message>
        <source>Water and casein share the space between the fat, so this is the figure ripening follows. Standards sort cheeses by it into soft, firm, hard and extra hard.</source>
        <translation>Eau et caséine se partagent la place entre la matière grasse ; c'est donc le chiffre que suit l'affinage. Les normes classent par lui les fromages en mous, fermes, durs et extra-durs.</translation>
    </message>
    <message>
        <source>Weight loss</source>
        <translation>Perte de poids</translation>
    </message>
    <message>
        <source>What a kind of cheese asks for: limits, usual composition, usual settings, each with its source.</source>
        <translation>Ce que demande un genre de fromage : limites, composition usuelle, réglages usuels, chacun avec sa source.</translation>
    </message>
    <message>
        <source>What a wheel loses in the store, nearly all of it water.</source>
        <translation>Ce que perd une meule en cave, presque tout en eau.</translation>
    </message>
    <message>
        <source>What covers the cheese: its own rind, cloth, wax, oil or a bag.</source>
        <translation>Ce qui couvre le fromage : sa propre croûte, toile, cire, huile ou sac.</translation>
    </message>
    <message>
        <source>What finishes a stage: the clock, or a state such as a pH, a temperature or a firmness, or the maker's feel.</source>
        <translation>Ce qui finit une étape : l'heure, un état comme un pH, une température ou une fermeté, ou le jugé du fabricant.</translation>
    </message>
    <message>
        <source>What goes into the milk beside the starter: coagulant, calcium chloride, mould spores, colour, salt, acid, water.</source>
        <translation>Ce qui entre dans le lait à côté du ferment : coagulant, chlorure de calcium, spores de moisissure, colorant, sel, acide, eau.</translation>
    </message>
    <message>
        <source>What runs from the curd: water, milk sugar, whey protein, minerals and a little fat.</source>
        <translation>Ce qui coule du caillé : eau, sucre du lait, protéines solubles, minéraux et un peu de matière grasse.</translation>
    </message>
    <message>
        <source>What the model expects of a recipe; it is never a measurement, and never a statement that a cheese is lawful or safe.</source>
        <translation>Ce que le modèle attend d'une recette ; jamais une mesure, et jamais l'affirmation qu'un fromage est légal ou sûr.</translation>
    </message>
    <message>
        <source>What you see while you point at a lever or drag: it is not kept until you press or let go.</source>
        <translation>Ce que vous voyez en pointant un levier ou en tirant : ce n'est gardé que si vous pressez ou lâchez.</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Meule</translation>
    </message>
    <message>
        <source>Whey</source>
        <translation>Lactosérum</translation>
    </message>
    <message>
        <source>Whey has to travel from the middle of a piece to its skin, so half the size is far more than twice as fast.</source>
        <translation>Le lactosérum doit aller du cœur d'un grain à sa peau ; moitié moins gros, c'est bien plus de deux fois plus vite.</translation>
    </message>
    <message>
        <source>Whey protein</source>
        <translation>Protéines du lactosérum</translation>
    </message>
    <message>
        <source>While you drag, curves, figures and verdict belong to the picture you see; only the bands follow a moment later.</source>
        <translation>Pendant que vous tirez, courbes, chiffres et verdict vont avec l'image que vous voyez ; seules les bandes suivent un instant après.</translation>
    </message>
    <message>
        <source>Whisker</source>
        <translation>Moustache</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>affinage</source>
        <translation>affinage</translation>
    </message>
    <message>
        <source>bound calcium</source>
        <translation>calcium lié</translation>
    </message>
    <message>
        <source>buffer</source>
        <translation>tampon</translation>
    </message>
    <message>
        <source>bulk starter</source>
        <translation>levain</translation>
    </message>
    <message>
        <source>calcium per protein</source>
        <translation>calcium par protéine</translation>
    </message>
    <message>
        <source>cardinal temperature model</source>
        <translation>modèle aux températures cardinales</translation>
    </message>
    <message>
        <source>closed skin</source>
        <translation>peau fermée</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>toile</translation>
    </message>
    <message>
        <source>common practice among makers</source>
        <translation>usage courant des fabricants</translation>
    </message>
    <message>
        <source>cut size</source>
        <translation>taille du grain</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>soutirage</translation>
    </message>
    <message>
        <source>figure of the model</source>
        <translation>chiffre du modèle</translation>
    </message>
    <message>
        <source>floc</source>
        <translation>floc</translation>
    </message>
    <message>
        <source>floc multiple</source>
        <translation>multiple de floc</translation>
    </message>
    <message>
        <source>floc time</source>
        <translation>temps de floc</translation>
    </message>
    <message>
        <source>handle</source>
        <translation>poignée</translation>
    </message>
    <message>
        <source>hoop</source>
        <translation>moule</translation>
    </message>
    <message>
        <source>lactate</source>
        <translation>lactate</translation>
    </message>
    <message>
        <source>lactic curd</source>
        <translation>caillé lactique</translation>
    </message>
    <message>
        <source>lactic set</source>
        <translation>caillage lactique</translation>
    </message>
    <message>
        <source>milk clotting units</source>
        <translation>unités coagulantes</translation>
    </message>
    <message>
        <source>moisture in non-fat substance</source>
        <translation>humidité du fromage dégraissé</translation>
    </message>
    <message>
        <source>moisture, fat-free</source>
        <translation>humidité dégraissée</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moisissure</translation>
    </message>
    <message>
        <source>multiplier</source>
        <translation>multiplicateur</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH at 24 h</source>
        <translation>pH à 24 h</translation>
    </message>
    <message>
        <source>pasta filata</source>
        <translation>pâte filée</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>morceau</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>tranchage</translation>
    </message>
    <message>
        <source>press load</source>
        <translation>charge de presse</translation>
    </message>
    <message>
        <source>range</source>
        <translation>plage</translation>
    </message>
    <message>
        <source>rennet</source>
        <translation>présure</translation>
    </message>
    <message>
        <source>rennet strength</source>
        <translation>force de la présure</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>repos</translation>
    </message>
    <message>
        <source>rind</source>
        <translation>croûte</translation>
    </message>
    <message>
        <source>ripening</source>
        <translation>affinage</translation>
    </message>
    <message>
        <source>ripening the milk</source>
        <translation>maturation du lait</translation>
    </message>
    <message>
        <source>salt to moisture</source>
        <translation>sel sur humidité</translation>
    </message>
    <message>
        <source>scald</source>
        <translation>échaudage</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>empilage</translation>
    </message>
    <message>
        <source>stacking</source>
        <translation>empilage</translation>
    </message>
    <message>
        <source>standardise</source>
        <translation>standardiser</translation>
    </message>
    <message>
        <source>starter</source>
        <translation>ferment</translation>
    </message>
    <message>
        <source>titratable acidity</source>
        <translation>acidité titrable</translation>
    </message>
    <message>
        <source>total solids</source>
        <translation>extrait sec total</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>incertitude</translation>
    </message>
    <message>
        <source>vacuum bag</source>
        <translation>sac sous vide</translation>
    </message>
    <message>
        <source>washed rind</source>
        <translation>croûte lavée</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>lavage</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>wax</source>
        <translation>cire</translation>
    </message>
    <message>
        <source>what moves it</source>
        <translation>ce qui agit dessus</translation>
    </message>
    <message>
        <source>whey off</source>
        <translation>lactosérum tiré</translation>
    </message>
    <message>
        <source>white mould</source>
        <translation>croûte fleurie</translation>
    </message>
    <message>
        <source>yield of 100 kg milk</source>
        <translation>rendement de 100 kg de lait</translation>
    </message>
</context>
<context>
    <name>Grip</name>
    <message>
        <source>end of {0}</source>
        <translation>fin de {0}</translation>
    </message>
    <message>
        <source>length of {0}</source>
        <translation>durée de {0}</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{1} : {0}</translation>
    </message>
</context>
<context>
    <name>Guess</name>
    <message>
        <source>A stage earlier</source>
        <translation>Une étape plus tôt</translation>
    </message>
    <message>
        <source>A stage later</source>
        <translation>Une étape plus tard</translation>
    </message>
    <message>
        <source>Another milk</source>
        <translation>Un autre lait</translation>
    </message>
    <message>
        <source>Leave a stage out</source>
        <translation>Omettre une étape</translation>
    </message>
    <message>
        <source>Put a stage in</source>
        <translation>Ajouter une étape</translation>
    </message>
    <message>
        <source>after {0}</source>
        <translation>après {0}</translation>
    </message>
</context>
<context>
    <name>GuessPage</name>
    <message>
        <source>&amp;Another guess</source>
        <translation>&amp;Deviner encore</translation>
    </message>
    <message>
        <source>&amp;Keep this change</source>
        <translation>&amp;Garder ce changement</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Montrer</translation>
    </message>
    <message>
        <source>A setting</source>
        <translation>Un réglage</translation>
    </message>
    <message>
        <source>Change a setting, a stage or the milk, and say what will come of it, before the forecast does.</source>
        <translation>Changez un réglage, une étape ou le lait, et dites ce qu’il en adviendra, avant que la prévision ne le dise.</translation>
    </message>
    <message>
        <source>Choose a setting above and give it another value.</source>
        <translation>Choisissez un réglage ci-dessus et donnez-lui une autre valeur.</translation>
    </message>
    <message>
        <source>Guess first, then show</source>
        <translation>Deviner d'abord, montrer ensuite</translation>
    </message>
    <message>
        <source>Guessed and kept: {0}</source>
        <translation>Deviné et gardé : {0}</translation>
    </message>
    <message>
        <source>How it came about</source>
        <translation>Comment c'est venu</translation>
    </message>
    <message>
        <source>I guess</source>
        <translation>Je devine</translation>
    </message>
    <message>
        <source>Now say of at least one outcome which way it goes.</source>
        <translation>Dites maintenant, pour un résultat au moins, dans quel sens il va.</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Ready when you are.</source>
        <translation>Quand vous voudrez.</translation>
    </message>
    <message>
        <source>The answer stays covered until you have guessed.</source>
        <translation>La réponse reste couverte jusqu'à ce que vous ayez deviné.</translation>
    </message>
    <message>
        <source>What is &amp;behind it</source>
        <translation>Ce qu'il y a &amp;derrière</translation>
    </message>
    <message>
        <source>What is changed</source>
        <translation>Ce qui est changé</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>tel quel</translation>
    </message>
    <message>
        <source>by (if you dare)</source>
        <translation>de (si vous osez)</translation>
    </message>
    <message>
        <source>less</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>more</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>not in this make</source>
        <translation>pas dans cette fabrication</translation>
    </message>
    <message>
        <source>now {0}</source>
        <translation>à présent {0}</translation>
    </message>
    <message>
        <source>same</source>
        <translation>pareil</translation>
    </message>
    <message>
        <source>so changed</source>
        <translation>ainsi changé</translation>
    </message>
    <message>
        <source>{0} of {1} ways right.</source>
        <translation>{0} sens justes sur {1}.</translation>
    </message>
    <message>
        <source>{0}: by how much</source>
        <translation>{0} : de combien</translation>
    </message>
    <message>
        <source>‹ Design</source>
        <translation>‹ Dessin</translation>
    </message>
</context>
<context>
    <name>Hours</name>
    <message>
        <source>{0} ends at {1}, outside the working hours ({2} to {3})</source>
        <translation>{0} finit à {1}, hors des heures de travail ({2} à {3})</translation>
    </message>
</context>
<context>
    <name>HoursForm</name>
    <message>
        <source>A recipe needs its start time for it; set it at the Milk place.</source>
        <translation>Une recette a besoin pour cela de son heure de début ; mettez-la à la place Lait.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Mark what falls outside my working hours</source>
        <translation>Marquer ce qui tombe hors de mes heures de travail</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Working hours</source>
        <translation>Heures de travail</translation>
    </message>
</context>
<context>
    <name>HouseStyle</name>
    <message>
        <source>Gates on the curves</source>
        <translation>Jalons sur les courbes</translation>
    </message>
    <message>
        <source>Limits of law and standards, as they are</source>
        <translation>Limites de la loi et des normes, telles quelles</translation>
    </message>
    <message>
        <source>Limits of your own</source>
        <translation>Vos propres limites</translation>
    </message>
    <message>
        <source>Usual ranges</source>
        <translation>Plages usuelles</translation>
    </message>
</context>
<context>
    <name>Journal</name>
    <message>
        <source>The recovery copy can't be written: {0}.</source>
        <translation>La copie de secours ne peut être écrite : {0}.</translation>
    </message>
</context>
<context>
    <name>Keys</name>
    <message>
        <source>A figure typed on an outcome</source>
        <translation>Un chiffre tapé sur un résultat</translation>
    </message>
    <message>
        <source>Arrows on a handle</source>
        <translation>Flèches sur une poignée</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Ctrl while dragging</source>
        <translation>Ctrl en tirant</translation>
    </message>
    <message>
        <source>Double-click a stage</source>
        <translation>Double-cliquer une étape</translation>
    </message>
    <message>
        <source>Drag a corner</source>
        <translation>Tirer un coin</translation>
    </message>
    <message>
        <source>Drag a rounded figure</source>
        <translation>Tirer un chiffre arrondi</translation>
    </message>
    <message>
        <source>Drag a stage by its name</source>
        <translation>Tirer une étape par son nom</translation>
    </message>
    <message>
        <source>Drag a stage's edge</source>
        <translation>Tirer le bord d'une étape</translation>
    </message>
    <message>
        <source>Enter on a handle</source>
        <translation>Entrée sur une poignée</translation>
    </message>
    <message>
        <source>Enter on an outcome</source>
        <translation>Entrée sur un résultat</translation>
    </message>
    <message>
        <source>Esc while dragging</source>
        <translation>Échap en tirant</translation>
    </message>
    <message>
        <source>Keys and gestures</source>
        <translation>Touches et gestes</translation>
    </message>
    <message>
        <source>L on a handle or lever</source>
        <translation>L sur une poignée ou un levier</translation>
    </message>
    <message>
        <source>Left, Right on a lever</source>
        <translation>Gauche, droite sur un levier</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Right click or menu key</source>
        <translation>Clic droit ou touche de menu</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>Save the keys</source>
        <translation>Enregistrer les touches</translation>
    </message>
    <message>
        <source>Shift while dragging</source>
        <translation>Maj en tirant</translation>
    </message>
    <message>
        <source>Tab on the curve</source>
        <translation>Tab sur la courbe</translation>
    </message>
    <message>
        <source>The keys could not be written: {0}</source>
        <translation>Les touches n'ont pu être écrites : {0}</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Molette</translation>
    </message>
    <message>
        <source>Written to {0}</source>
        <translation>Écrit dans {0}</translation>
    </message>
    <message>
        <source>change it; Page Up and Down more, Shift less</source>
        <translation>la changer ; Page préc. et suiv. davantage, Maj moins</translation>
    </message>
    <message>
        <source>goes from handle to handle</source>
        <translation>va de poignée en poignée</translation>
    </message>
    <message>
        <source>is the value to aim at; Enter looks for the way</source>
        <translation>est la valeur visée ; Entrée cherche comment y aller</translation>
    </message>
    <message>
        <source>its length; a diamond asks for another state</source>
        <translation>sa durée ; un losange demande un autre état</translation>
    </message>
    <message>
        <source>keeps it as it is while you aim; Ctrl+L in a field</source>
        <translation>le garde tel quel pendant que vous visez ; Ctrl+L dans un champ</translation>
    </message>
    <message>
        <source>lets go of round values</source>
        <translation>libère des valeurs rondes</translation>
    </message>
    <message>
        <source>opens it: its limits, why, what moves it, aim</source>
        <translation>l'ouvre : ses limites, pourquoi, ce qui agit dessus, viser</translation>
    </message>
    <message>
        <source>previews a step; Enter keeps it</source>
        <translation>montre un pas ; Entrée le garde</translation>
    </message>
    <message>
        <source>puts everything back</source>
        <translation>remet tout en place</translation>
    </message>
    <message>
        <source>puts it elsewhere in the make</source>
        <translation>la met ailleurs dans la fabrication</translation>
    </message>
    <message>
        <source>says what else can be done there</source>
        <translation>dit ce qu'on peut y faire encore</translation>
    </message>
    <message>
        <source>shows it alone</source>
        <translation>la montre seule</translation>
    </message>
    <message>
        <source>that setting: cut, load, salt, whey off</source>
        <translation>ce réglage : découpe, charge, sel, soutirage</translation>
    </message>
    <message>
        <source>the temperature there</source>
        <translation>la température à cet endroit</translation>
    </message>
    <message>
        <source>turns “move along” and “keep the end” round</source>
        <translation>inverse « décaler » et « garder la fin »</translation>
    </message>
    <message>
        <source>types the value</source>
        <translation>tape la valeur</translation>
    </message>
    <message>
        <source>zooms; with Shift it pans; dragging the curves pans too</source>
        <translation>agrandit ; avec Maj elle déplace ; tirer les courbes déplace aussi</translation>
    </message>
</context>
<context>
    <name>Lane</name>
    <message>
        <source>main make</source>
        <translation>fabrication principale</translation>
    </message>
    <message>
        <source>{0} of the cream, after {1}</source>
        <translation>{0} de la crème, après {1}</translation>
    </message>
    <message>
        <source>{0} of the curd, after {1}</source>
        <translation>{0} du caillé, après {1}</translation>
    </message>
    <message>
        <source>{0} of the whey, after {1}</source>
        <translation>{0} du lactosérum, après {1}</translation>
    </message>
</context>
<context>
    <name>LaneTable</name>
    <message>
        <source>Outcomes of the main make and its branches</source>
        <translation>Résultats de la fabrication principale et de ses branches</translation>
    </message>
</context>
<context>
    <name>Lanes</name>
    <message>
        <source>FDM</source>
        <translation>G/S</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>moist.</source>
        <translation>humid.</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>yield</source>
        <translation>rendement</translation>
    </message>
</context>
<context>
    <name>LedgerDesk</name>
    <message>
        <source>Batch noted</source>
        <translation>Fabrication notée</translation>
    </message>
    <message>
        <source>Batch taken back</source>
        <translation>Fabrication retirée</translation>
    </message>
    <message>
        <source>Batch: {0}</source>
        <translation>Fabrication : {0}</translation>
    </message>
    <message>
        <source>Reading: {0}</source>
        <translation>Mesure : {0}</translation>
    </message>
    <message>
        <source>Tasting</source>
        <translation>Dégustation</translation>
    </message>
    <message>
        <source>Tasting corrected</source>
        <translation>Dégustation corrigée</translation>
    </message>
</context>
<context>
    <name>LessonPage</name>
    <message>
        <source>Print the &amp;targets</source>
        <translation>Imprimer les &amp;cibles</translation>
    </message>
    <message>
        <source>Sheet for learners</source>
        <translation>Feuille pour apprenants</translation>
    </message>
    <message>
        <source>Sheet for learners, as printed</source>
        <translation>Feuille pour apprenants, telle qu'imprimée</translation>
    </message>
    <message>
        <source>With its targets to work by, or without them: guess first, then write down what was read.</source>
        <translation>Avec ses cibles pour travailler, ou sans : deviner d'abord, puis noter ce qui a été lu.</translation>
    </message>
    <message>
        <source>‹ Design</source>
        <translation>‹ Dessin</translation>
    </message>
</context>
<context>
    <name>LeverList</name>
    <message>
        <source>(8 in 10 makes: {0} to {1})</source>
        <translation>(8 fabrications sur 10 : de {0} à {1})</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Calcul en cours…</translation>
    </message>
    <message>
        <source>Nothing in this make moves it.</source>
        <translation>Rien dans cette fabrication n'agit dessus.</translation>
    </message>
    <message>
        <source>What moves it</source>
        <translation>Ce qui agit dessus</translation>
    </message>
    <message>
        <source>at its end</source>
        <translation>au bout de sa plage</translation>
    </message>
    <message>
        <source>{0}, locked</source>
        <translation>{0}, bloqué</translation>
    </message>
</context>
<context>
    <name>Lift</name>
    <message>
        <source>after {0}</source>
        <translation>après {0}</translation>
    </message>
    <message>
        <source>before {0}</source>
        <translation>avant {0}</translation>
    </message>
    <message>
        <source>stays where it is</source>
        <translation>reste où elle est</translation>
    </message>
</context>
<context>
    <name>LookAround</name>
    <message>
        <source>A look around</source>
        <translation>Un tour d'horizon</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Précédent</translation>
    </message>
    <message>
        <source>Close for good</source>
        <translation>Fermer pour de bon</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} sur {1}</translation>
    </message>
</context>
<context>
    <name>LookUp</name>
    <message>
        <source>A constant of the make model: {0}.</source>
        <translation>Une constante du modèle de fabrication : {0}.</translation>
    </message>
    <message>
        <source>A word, a figure, a source …</source>
        <translation>Un mot, un chiffre, une source …</translation>
    </message>
    <message>
        <source>Allowed: {0}.</source>
        <translation>Permis : {0}.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Constants of the model</source>
        <translation>Constantes du modèle</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Figures of the style</source>
        <translation>Chiffres du style</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>How we have it: {0}</source>
        <translation>Comment nous l'avons : {0}</translation>
    </message>
    <message>
        <source>It may honestly lie at {0}; the bands draw from that range.</source>
        <translation>Elle peut honnêtement être à {0} ; les bandes tirent de cette plage.</translation>
    </message>
    <message>
        <source>Laws of the model</source>
        <translation>Lois du modèle</translation>
    </message>
    <message>
        <source>Look up</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Nothing found; a shorter word may do.</source>
        <translation>Rien trouvé ; un mot plus court peut-être.</translation>
    </message>
    <message>
        <source>Practice stays within {0} to {1}.</source>
        <translation>L'usage reste entre {0} et {1}.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Show where it is</source>
        <translation>Montrer où c'est</translation>
    </message>
    <message>
        <source>Source: {0}</source>
        <translation>Source : {0}</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Ce qu'il dit</translation>
    </message>
    <message>
        <source>What to look among</source>
        <translation>Parmi quoi chercher</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Mots</translation>
    </message>
    <message>
        <source>no range</source>
        <translation>sans plage</translation>
    </message>
    <message>
        <source>{0} found</source>
        <translation>{0} trouvés</translation>
    </message>
    <message>
        <source>{0}. Forecast {1}: {2}.</source>
        <translation>{0}. Prévision {1} : {2}.</translation>
    </message>
</context>
<context>
    <name>MakeCurve</name>
    <message>
        <source>Let go where the stage is to stand; Esc leaves it where it is.</source>
        <translation>Lâchez où l'étape doit se trouver ; Échap la laisse où elle est.</translation>
    </message>
    <message>
        <source>Make curve</source>
        <translation>Courbe de fabrication</translation>
    </message>
    <message>
        <source>Shift lets go of round values, Ctrl keeps the end, Esc cancels.</source>
        <translation>Maj libère des valeurs rondes, Ctrl garde la fin, Échap abandonne.</translation>
    </message>
    <message>
        <source>{0}: {1} to {2}, ends by {3}</source>
        <translation>{0} : de {1} à {2}, finit par {3}</translation>
    </message>
</context>
<context>
    <name>MilkPage</name>
    <message>
        <source>Another milk</source>
        <translation>Un autre lait</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Tel quel</translation>
    </message>
    <message>
        <source>Beside the milk one thing shifts.</source>
        <translation>En plus du lait, une chose change.</translation>
    </message>
    <message>
        <source>Beside the milk {0} things shift.</source>
        <translation>En plus du lait, {0} choses changent.</translation>
    </message>
    <message>
        <source>Breed</source>
        <translation>Race</translation>
    </message>
    <message>
        <source>Milk alone</source>
        <translation>Lait seul</translation>
    </message>
    <message>
        <source>Milk of</source>
        <translation>Lait de</translation>
    </message>
    <message>
        <source>Move the recipe</source>
        <translation>Passer la recette</translation>
    </message>
    <message>
        <source>Move to {0} milk</source>
        <translation>Passer au lait de {0}</translation>
    </message>
    <message>
        <source>Nothing but the milk needs to change.</source>
        <translation>Rien que le lait n'a besoin de changer.</translation>
    </message>
    <message>
        <source>One step of undo. Doses and settings that no rule speaks of stay as they are.</source>
        <translation>Un seul pas d'annulation. Les doses et réglages dont aucune règle ne parle restent tels quels.</translation>
    </message>
    <message>
        <source>Outcomes as it is, with the milk alone, and with what shifts</source>
        <translation>Résultats tels quels, avec le lait seul, et avec ce qui se décale</translation>
    </message>
    <message>
        <source>Share of the milk</source>
        <translation>Part du lait</translation>
    </message>
    <message>
        <source>So changed</source>
        <translation>Ainsi changé</translation>
    </message>
    <message>
        <source>The moisture could not be brought all the way back.</source>
        <translation>L'humidité n'a pu être ramenée tout à fait.</translation>
    </message>
    <message>
        <source>Working out what shifts…</source>
        <translation>Calcul de ce qui se décale…</translation>
    </message>
    <message>
        <source>You could also: {0}</source>
        <translation>Possible aussi : {0}</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>tel quel</translation>
    </message>
    <message>
        <source>average of the species</source>
        <translation>moyenne de l'espèce</translation>
    </message>
    <message>
        <source>so changed</source>
        <translation>ainsi changé</translation>
    </message>
    <message>
        <source>‹ Milk</source>
        <translation>‹ Lait</translation>
    </message>
</context>
<context>
    <name>MilkPlace</name>
    <message>
        <source>Add addition</source>
        <translation>Ajouter un ingrédient</translation>
    </message>
    <message>
        <source>Add milk</source>
        <translation>Ajouter un lait</translation>
    </message>
    <message>
        <source>Add starter</source>
        <translation>Ajouter un ferment</translation>
    </message>
    <message>
        <source>Another amount…</source>
        <translation>Une autre quantité…</translation>
    </message>
    <message>
        <source>Another milk…</source>
        <translation>Un autre lait…</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Moule</translation>
    </message>
    <message>
        <source>In the vat: {0} kg, fat {1} %, casein {2} %, lactose {3} %, pH {4}</source>
        <translation>En cuve : {0} kg, matière grasse {1} %, caséine {2} %, lactose {3} %, pH {4}</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Recette</translation>
    </message>
    <message>
        <source>Rind or coat</source>
        <translation>Croûte ou enrobage</translation>
    </message>
    <message>
        <source>Standardise…</source>
        <translation>Standardiser…</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Vat</source>
        <translation>Cuve</translation>
    </message>
    <message>
        <source>average of the species</source>
        <translation>moyenne de l'espèce</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>the first that ripens</source>
        <translation>la première qui mature</translation>
    </message>
</context>
<context>
    <name>Mishap</name>
    <message>
        <source>Something in the program went wrong. Your work is kept: every edit is in the recovery copy.</source>
        <translation>Quelque chose s'est mal passé dans le programme. Votre travail est gardé : chaque modification est dans la copie de secours.</translation>
    </message>
    <message>
        <source>The details are in {0}.</source>
        <translation>Les détails sont dans {0}.</translation>
    </message>
    <message>
        <source>The details could not be written to a file.</source>
        <translation>Les détails n'ont pu être écrits dans un fichier.</translation>
    </message>
</context>
<context>
    <name>NearestPage</name>
    <message>
        <source>1 change</source>
        <translation>1 changement</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Telle quelle</translation>
    </message>
    <message>
        <source>Change the recipe so</source>
        <translation>Changer ainsi la recette</translation>
    </message>
    <message>
        <source>Looking at every style…</source>
        <translation>Examen de chaque style…</translation>
    </message>
    <message>
        <source>Milk: {0}</source>
        <translation>Lait : {0}</translation>
    </message>
    <message>
        <source>More changes would bring in: {0}</source>
        <translation>D'autres changements feraient rentrer : {0}</translation>
    </message>
    <message>
        <source>Nothing that its limits ask for.</source>
        <translation>Rien de ce que demandent ses limites.</translation>
    </message>
    <message>
        <source>Nothing: by its figures it is one already.</source>
        <translation>Rien : d'après ses chiffres, c'en est déjà un.</translation>
    </message>
    <message>
        <source>Out of reach so: {0}</source>
        <translation>Hors d'atteinte ainsi : {0}</translation>
    </message>
    <message>
        <source>Outcomes as it is and so changed</source>
        <translation>Résultats tels quels et ainsi changés</translation>
    </message>
    <message>
        <source>So changed</source>
        <translation>Ainsi changé</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Style</translation>
    </message>
    <message>
        <source>Styles, the nearest first</source>
        <translation>Styles, les plus proches d'abord</translation>
    </message>
    <message>
        <source>That brings it nearer, but not inside its limits.</source>
        <translation>Cela rapproche, mais pas jusque dans ses limites.</translation>
    </message>
    <message>
        <source>The recipe is then checked against {0}; one step of undo.</source>
        <translation>La recette est ensuite contrôlée selon {0} ; un seul pas d'annulation.</translation>
    </message>
    <message>
        <source>To change</source>
        <translation>À changer</translation>
    </message>
    <message>
        <source>Towards {0}</source>
        <translation>Vers {0}</translation>
    </message>
    <message>
        <source>Ways worked out</source>
        <translation>Chemins calculés</translation>
    </message>
    <message>
        <source>What lies between</source>
        <translation>Ce qu'il y a entre les deux</translation>
    </message>
    <message>
        <source>What would have to change for this recipe to be a …?</source>
        <translation>Que faudrait-il changer pour que cette recette soit un … ?</translation>
    </message>
    <message>
        <source>Working out the smallest change…</source>
        <translation>Recherche du plus petit changement…</translation>
    </message>
    <message>
        <source>another recipe</source>
        <translation>une autre recette</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>telle quelle</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>so changed</source>
        <translation>ainsi changé</translation>
    </message>
    <message>
        <source>{0} changes</source>
        <translation>{0} changements</translation>
    </message>
    <message>
        <source>{0} is made of {1} milk.</source>
        <translation>{0} se fait de lait de {1}.</translation>
    </message>
    <message>
        <source>{0} styles, the nearest first. Choose one to see the smallest change that gets there.</source>
        <translation>{0} styles, les plus proches d'abord. Choisissez-en un pour voir le plus petit changement qui y mène.</translation>
    </message>
    <message>
        <source>{0}, not all</source>
        <translation>{0}, pas tout</translation>
    </message>
    <message>
        <source>‹ Check</source>
        <translation>‹ Contrôle</translation>
    </message>
</context>
<context>
    <name>NoteBar</name>
    <message>
        <source>Note to the saved version</source>
        <translation>Note à la version enregistrée</translation>
    </message>
    <message>
        <source>Saved as version {0}</source>
        <translation>Enregistré comme version {0}</translation>
    </message>
    <message>
        <source>a note, if you like</source>
        <translation>une note, si vous voulez</translation>
    </message>
</context>
<context>
    <name>OpenedOutcome</name>
    <message>
        <source>8 in 10 makes within {0}</source>
        <translation>8 fabrications sur 10 dans {0}</translation>
    </message>
    <message>
        <source>Aim</source>
        <translation>Viser</translation>
    </message>
    <message>
        <source>All {0} settings</source>
        <translation>Les {0} réglages</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Calcul en cours…</translation>
    </message>
    <message>
        <source>Milk, doses and all the style does not speak of</source>
        <translation>Lait, doses et tout ce dont le style ne parle pas</translation>
    </message>
    <message>
        <source>No middle of a style is known for it, so there is nothing to hold it against.</source>
        <translation>Aucun milieu de style n'est connu pour lui, il n'y a donc rien à quoi le comparer.</translation>
    </message>
    <message>
        <source>Only the strongest</source>
        <translation>Les plus forts seulement</translation>
    </message>
    <message>
        <source>The middle is from: {0}.</source>
        <translation>Le milieu vient de : {0}.</translation>
    </message>
    <message>
        <source>Usual range: {0} ({1})</source>
        <translation>Plage usuelle : {0} ({1})</translation>
    </message>
    <message>
        <source>What is left when the parts above are taken from the whole: {0} here, {1} at the middle.</source>
        <translation>Ce qui reste quand on ôte les parts ci-dessus du tout : {0} ici, {1} au milieu.</translation>
    </message>
    <message>
        <source>What moves it, a step either way</source>
        <translation>Ce qui agit dessus, d'un pas dans chaque sens</translation>
    </message>
    <message>
        <source>Where the usual direction turns</source>
        <translation>Où le sens habituel s’inverse</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>{0} instead of {1}</source>
        <translation>{0} au lieu de {1}</translation>
    </message>
</context>
<context>
    <name>Opening</name>
    <message>
        <source>Aim: {0}</source>
        <translation>Viser : {0}</translation>
    </message>
    <message>
        <source>Free again: {0}</source>
        <translation>De nouveau libre : {0}</translation>
    </message>
    <message>
        <source>Kept: {0}</source>
        <translation>Gardé : {0}</translation>
    </message>
    <message>
        <source>Locked: {0}</source>
        <translation>Verrouillé : {0}</translation>
    </message>
    <message>
        <source>Nothing to lock here: go to a handle or a field that moves the cheese.</source>
        <translation>Rien à verrouiller ici : allez à une poignée ou à un champ qui agit sur le fromage.</translation>
    </message>
    <message>
        <source>Open an outcome first: a lock keeps a setting while you aim at a value.</source>
        <translation>Ouvrez d’abord un résultat : un verrou garde un réglage pendant que vous visez une valeur.</translation>
    </message>
    <message>
        <source>{0}: click, + or − keeps it</source>
        <translation>{0} : cliquer, + ou − le garde</translation>
    </message>
</context>
<context>
    <name>Outcome</name>
    <message>
        <source>&gt; 9 in 10</source>
        <translation>&gt; 9/10</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcium</translation>
    </message>
    <message>
        <source>Calcium per g protein</source>
        <translation>Calcium par g de protéine</translation>
    </message>
    <message>
        <source>Curd moisture at draining</source>
        <translation>Humidité du caillé au soutirage</translation>
    </message>
    <message>
        <source>FDM</source>
        <translation>G/S</translation>
    </message>
    <message>
        <source>Fat in dry matter</source>
        <translation>Gras sur sec (G/S)</translation>
    </message>
    <message>
        <source>Flocculation</source>
        <translation>Floculation</translation>
    </message>
    <message>
        <source>MNFS</source>
        <translation>HFD</translation>
    </message>
    <message>
        <source>Make takes</source>
        <translation>Durée de fabrication</translation>
    </message>
    <message>
        <source>Moisture, fat-free (MNFS)</source>
        <translation>Humidité (HFD)</translation>
    </message>
    <message>
        <source>Salt in moisture</source>
        <translation>Sel sur humidité</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>Yield of 100 kg milk</source>
        <translation>Rendement de 100 kg de lait</translation>
    </message>
    <message>
        <source>met</source>
        <translation>respecté</translation>
    </message>
    <message>
        <source>near</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>non respecté</translation>
    </message>
    <message>
        <source>{0} in 10</source>
        <translation>{0}/10</translation>
    </message>
    <message>
        <source>{0} outside</source>
        <translation>{0} dehors</translation>
    </message>
</context>
<context>
    <name>OutcomeList</name>
    <message>
        <source>8 in 10 makes within {0}</source>
        <translation>8 fabrications sur 10 dans {0}</translation>
    </message>
    <message>
        <source>Open below</source>
        <translation>Ouvert au-dessous</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Résultats</translation>
    </message>
</context>
<context>
    <name>OutcomePair</name>
    <message>
        <source>Difference</source>
        <translation>Différence</translation>
    </message>
    <message>
        <source>Open make</source>
        <translation>Fabrication ouverte</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Outcomes of both makes</source>
        <translation>Résultats des deux fabrications</translation>
    </message>
    <message>
        <source>The other</source>
        <translation>L'autre</translation>
    </message>
</context>
<context>
    <name>OutcomePanel</name>
    <message>
        <source>No style is chosen, so nothing is checked.</source>
        <translation>Aucun style n'est choisi, rien n'est donc contrôlé.</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>Résultats</translation>
    </message>
    <message>
        <source>Outcomes of the make</source>
        <translation>Résultats de la fabrication</translation>
    </message>
</context>
<context>
    <name>OutcomeTable</name>
    <message>
        <source>Difference</source>
        <translation>Différence</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
</context>
<context>
    <name>Outside</name>
    <message>
        <source>Curdwright</source>
        <translation>Curdwright</translation>
    </message>
    <message>
        <source>Save under another name…</source>
        <translation>Enregistrer sous un autre nom…</translation>
    </message>
    <message>
        <source>Write over it</source>
        <translation>Écraser</translation>
    </message>
    <message>
        <source>only wording or order differ.</source>
        <translation>seuls la formulation ou l’ordre diffèrent.</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Back (Esc)</source>
        <translation>Retour (Échap)</translation>
    </message>
    <message>
        <source>Part of the page; arrows scroll it</source>
        <translation>Partie de la page ; les flèches la font défiler</translation>
    </message>
</context>
<context>
    <name>Pane</name>
    <message>
        <source>curd moisture</source>
        <translation>humidité du caillé</translation>
    </message>
    <message>
        <source>firmness</source>
        <translation>fermeté</translation>
    </message>
    <message>
        <source>gel firmness</source>
        <translation>fermeté du gel</translation>
    </message>
    <message>
        <source>milk, then curd</source>
        <translation>lait, puis caillé</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH, {0}</source>
        <translation>pH, {0}</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>sel</translation>
    </message>
    <message>
        <source>whey</source>
        <translation>lactosérum</translation>
    </message>
    <message>
        <source>whey run off, kg per 100 kg milk</source>
        <translation>lactosérum écoulé, kg/100 kg</translation>
    </message>
    <message>
        <source>whey, kg per 100 kg milk</source>
        <translation>sérum, kg/100 kg</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>  (goes on)</source>
        <translation>  (suite)</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Page suivante</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; save it as a PDF instead.</source>
        <translation>Aucune imprimante n'est installée sur cet ordinateur ; enregistrez plutôt en PDF.</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Format du papier</translation>
    </message>
    <message>
        <source>Plan of the make, as printed</source>
        <translation>Fiche de fabrication, telle qu'imprimée</translation>
    </message>
    <message>
        <source>Save as &amp;PDF…</source>
        <translation>Enregistrer en &amp;PDF…</translation>
    </message>
    <message>
        <source>Save the pages</source>
        <translation>Enregistrer les pages</translation>
    </message>
    <message>
        <source>The pages could not be written to {path}: {why}</source>
        <translation>Les pages n'ont pu être écrites dans {path} : {why}</translation>
    </message>
    <message>
        <source>The printer did not answer; save it as a PDF instead.</source>
        <translation>L'imprimante n'a pas répondu ; enregistrez plutôt en PDF.</translation>
    </message>
    <message>
        <source>page {0} of {1}</source>
        <translation>page {0} sur {1}</translation>
    </message>
    <message>
        <source>the PDF could not be begun</source>
        <translation>le PDF n'a pu être commencé</translation>
    </message>
    <message>
        <source>{0}: plan of the make</source>
        <translation>{0} : fiche de fabrication</translation>
    </message>
    <message>
        <source>{count} pages written to {path}</source>
        <translation>{count} pages écrites dans {path}</translation>
    </message>
</context>
<context>
    <name>Partners</name>
    <message>
        <source>&amp;Lanes of this vat</source>
        <translation>&amp;Voies de cette cuve</translation>
    </message>
    <message>
        <source>A &amp;recipe file…</source>
        <translation>Un &amp;fichier de recette…</translation>
    </message>
    <message>
        <source>A saved &amp;version</source>
        <translation>Une &amp;version enregistrée</translation>
    </message>
    <message>
        <source>An &amp;example</source>
        <translation>Un &amp;exemple</translation>
    </message>
    <message>
        <source>None yet: every save keeps a version</source>
        <translation>Aucune encore : chaque enregistrement garde une version</translation>
    </message>
    <message>
        <source>Open a recipe to compare with</source>
        <translation>Ouvrir une recette à comparer</translation>
    </message>
    <message>
        <source>The middle of a &amp;style</source>
        <translation>Le milieu d'un &amp;style</translation>
    </message>
    <message>
        <source>This vat is not split: no branch of its curd</source>
        <translation>Cette cuve n'est pas partagée : pas de branche de son caillé</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>l'autre</translation>
    </message>
    <message>
        <source>version {0}</source>
        <translation>version {0}</translation>
    </message>
    <message>
        <source>{0} against {1}</source>
        <translation>{0} contre {1}</translation>
    </message>
</context>
<context>
    <name>Projector</name>
    <message>
        <source>Esc: back to the desk</source>
        <translation>Échap : retour au bureau</translation>
    </message>
    <message>
        <source>View for the projector</source>
        <translation>Vue pour le projecteur</translation>
    </message>
</context>
<context>
    <name>Rail</name>
    <message>
        <source>Places</source>
        <translation>Places</translation>
    </message>
</context>
<context>
    <name>Reading</name>
    <message>
        <source>of 100 kg milk:  curd {0}  ·  whey in the vat {1}  ·  run off {2}</source>
        <translation>de 100 kg de lait :  caillé {0}  ·  lactosérum en cuve {1}  ·  écoulé {2}</translation>
    </message>
    <message>
        <source>temperature, {0}</source>
        <translation>température, {0}</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>Corrected; it was {0}</source>
        <translation>Corrigé ; c'était {0}</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Forecast then</source>
        <translation>Prévu alors</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What was forecast and what was measured</source>
        <translation>Ce qui était prévu et ce qui a été mesuré</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Avec</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retiré</translation>
    </message>
</context>
<context>
    <name>RecentList</name>
    <message>
        <source>Leave {0} out of this list; the file stays where it is</source>
        <translation>Retirer {0} de cette liste ; le fichier reste où il est</translation>
    </message>
    <message>
        <source>Recipes you open or save will stand here. A recipe is a plain text file of your own: keep it wherever you keep your papers.</source>
        <translation>Les recettes que vous ouvrez ou enregistrez seront ici. Une recette est un simple fichier de texte à vous : gardez-le où vous gardez vos papiers.</translation>
    </message>
    <message>
        <source>not there any more</source>
        <translation>n'est plus là</translation>
    </message>
</context>
<context>
    <name>Recovery</name>
    <message>
        <source>Against “{0}” as it is saved: {1}</source>
        <translation>Par rapport à « {0} » tel qu’il est enregistré : {1}</translation>
    </message>
    <message>
        <source>Ask again later</source>
        <translation>Redemander plus tard</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>L'oublier</translation>
    </message>
    <message>
        <source>It can't be read as a recipe by this version of the program.</source>
        <translation>Cette version du programme ne peut pas le lire comme recette.</translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translation>Il n’a jamais été enregistré.</translation>
    </message>
    <message>
        <source>Its file “{0}” is gone or can't be read.</source>
        <translation>Son fichier « {0} » a disparu ou ne peut pas être lu.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Le reprendre</translation>
    </message>
    <message>
        <source>Take it up and compare</source>
        <translation>Reprendre et comparer</translation>
    </message>
    <message>
        <source>The file was changed since that work began.</source>
        <translation>Le fichier a été modifié depuis le début de ce travail.</translation>
    </message>
    <message>
        <source>as it was saved</source>
        <translation>tel qu’il était enregistré</translation>
    </message>
    <message>
        <source>“{0}” has work from last time that was not saved.</source>
        <translation>« {0} » a du travail de la dernière fois qui n'a pas été enregistré.</translation>
    </message>
</context>
<context>
    <name>RuleSets</name>
    <message>
        <source>Back to the rules that bind every maker of this style</source>
        <translation>Revenir aux règles qui lient tout fabricant de ce style</translation>
    </message>
    <message>
        <source>Held against</source>
        <translation>Comparé à</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>comme d'usage</translation>
    </message>
</context>
<context>
    <name>Scale</name>
    <message>
        <source>By the area</source>
        <translation>Selon la surface</translation>
    </message>
    <message>
        <source>By the milk</source>
        <translation>Selon le lait</translation>
    </message>
    <message>
        <source>By the thickness squared</source>
        <translation>Selon le carré de l'épaisseur</translation>
    </message>
    <message>
        <source>By the vat's power</source>
        <translation>Selon la puissance de la cuve</translation>
    </message>
    <message>
        <source>To be checked</source>
        <translation>À vérifier</translation>
    </message>
    <message>
        <source>Unchanged</source>
        <translation>Inchangé</translation>
    </message>
    <message>
        <source>as many times as there is more milk</source>
        <translation>autant de fois qu'il y a plus de lait</translation>
    </message>
    <message>
        <source>no rule tells: left as it is</source>
        <translation>aucune règle ne le dit : laissé tel quel</translation>
    </message>
    <message>
        <source>so that the pressure stays</source>
        <translation>pour que la pression reste</translation>
    </message>
    <message>
        <source>the way salt goes in</source>
        <translation>comme entre le sel</translation>
    </message>
    <message>
        <source>what does not go by the amount</source>
        <translation>ce qui ne suit pas la quantité</translation>
    </message>
    <message>
        <source>what it can warm</source>
        <translation>ce qu'elle peut chauffer</translation>
    </message>
</context>
<context>
    <name>ScalePage</name>
    <message>
        <source>12 kW</source>
        <translation>12 kW</translation>
    </message>
    <message>
        <source>300 mm</source>
        <translation>300 mm</translation>
    </message>
    <message>
        <source>A form is between 20 mm and 1.5 m across.</source>
        <translation>Un moule a entre 20 mm et 1,5 m de diamètre.</translation>
    </message>
    <message>
        <source>Another amount of milk</source>
        <translation>Une autre quantité de lait</translation>
    </message>
    <message>
        <source>As much milk as now. Type another amount, and every line says which rule it goes by.</source>
        <translation>Autant de lait que maintenant. Tapez une autre quantité, et chaque ligne dit selon quelle règle elle va.</translation>
    </message>
    <message>
        <source>Cheeses</source>
        <translation>Fromages</translation>
    </message>
    <message>
        <source>Diameter of the form</source>
        <translation>Diamètre du moule</translation>
    </message>
    <message>
        <source>Heating power of the vat</source>
        <translation>Puissance de chauffe de la cuve</translation>
    </message>
    <message>
        <source>How many forms</source>
        <translation>Nombre de moules</translation>
    </message>
    <message>
        <source>Milk in all</source>
        <translation>Lait en tout</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Rien n'est encore changé.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Outcomes before and after</source>
        <translation>Résultats avant et après</translation>
    </message>
    <message>
        <source>Scale the recipe</source>
        <translation>Mettre à l'échelle</translation>
    </message>
    <message>
        <source>Scale to {0}</source>
        <translation>Mettre à l'échelle de {0}</translation>
    </message>
    <message>
        <source>The number of forms is a whole number.</source>
        <translation>Le nombre de moules est un nombre entier.</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>Vat heats with</source>
        <translation>La cuve chauffe avec</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What becomes of every line, and by which rule</source>
        <translation>Ce que devient chaque ligne, et par quelle règle</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>across, in number</source>
        <translation>de diamètre, au nombre de</translation>
    </message>
    <message>
        <source>as many, but larger</source>
        <translation>autant, mais plus grands</translation>
    </message>
    <message>
        <source>forms of</source>
        <translation>moules de</translation>
    </message>
    <message>
        <source>more of the same form</source>
        <translation>plus du même moule</translation>
    </message>
    <message>
        <source>{0} times the milk: {1} figures change, {2} are to be checked, the rest stays.</source>
        <translation>{0} fois le lait : {1} chiffres changent, {2} sont à vérifier, le reste demeure.</translation>
    </message>
    <message>
        <source>‹ Milk</source>
        <translation>‹ Lait</translation>
    </message>
</context>
<context>
    <name>SettingChoice</name>
    <message>
        <source>A step less</source>
        <translation>Un pas de moins</translation>
    </message>
    <message>
        <source>A step more</source>
        <translation>Un pas de plus</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Value of the setting</source>
        <translation>Valeur du réglage</translation>
    </message>
</context>
<context>
    <name>SourceLink</name>
    <message>
        <source>Source: {0}</source>
        <translation>Source : {0}</translation>
    </message>
</context>
<context>
    <name>SplitForm</name>
    <message>
        <source>How much of it</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>It begins as a twin of the stages that follow; change there what is to differ.</source>
        <translation>Elle commence comme jumelle des étapes qui suivent ; changez-y ce qui doit différer.</translation>
    </message>
    <message>
        <source>It begins as a whey cheese: heated, curdled with acid, hung in cloth.</source>
        <translation>Elle commence comme un fromage de lactosérum : chauffé, caillé à l'acide, suspendu en toile.</translation>
    </message>
    <message>
        <source>It begins as cream left to ripen. Cream is taken off before the milk sets.</source>
        <translation>Elle commence comme une crème mise à maturer. La crème se prend avant que le lait caille.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Split off</source>
        <translation>Séparer</translation>
    </message>
    <message>
        <source>Split off after “{0}”</source>
        <translation>Séparer après « {0} »</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>crème</translation>
    </message>
    <message>
        <source>curd (before the cut: milk)</source>
        <translation>caillé (avant le décaillage : lait)</translation>
    </message>
    <message>
        <source>what you call this cheese</source>
        <translation>comment vous appelez ce fromage</translation>
    </message>
    <message>
        <source>whey</source>
        <translation>lactosérum</translation>
    </message>
</context>
<context>
    <name>StageForm</name>
    <message>
        <source>End of {0}</source>
        <translation>Fin de {0}</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Goes in: {0}</source>
        <translation>Ajout : {0}</translation>
    </message>
    <message>
        <source>Load {0}</source>
        <translation>Charge {0}</translation>
    </message>
    <message>
        <source>Settings of the selected stage</source>
        <translation>Réglages de l'étape choisie</translation>
    </message>
    <message>
        <source>Settings of what is selected; arrows scroll them</source>
        <translation>Réglages de ce qui est choisi ; les flèches les font défiler</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Take out: {0}</source>
        <translation>Retirer : {0}</translation>
    </message>
    <message>
        <source>The state asked for is not reached; it ends at the latest moment.</source>
        <translation>L'état demandé n'est pas atteint ; elle finit à sa limite de temps.</translation>
    </message>
    <message>
        <source>What ends the stage</source>
        <translation>Ce qui finit l'étape</translation>
    </message>
    <message>
        <source>{0} to {1}  ·  {2}</source>
        <translation>{0} à {1}  ·  {2}</translation>
    </message>
</context>
<context>
    <name>StageWork</name>
    <message>
        <source>Cut stage</source>
        <translation>Couper l'étape</translation>
    </message>
    <message>
        <source>Duplicate stage</source>
        <translation>Dupliquer l'étape</translation>
    </message>
    <message>
        <source>Insert {0}</source>
        <translation>Insérer {0}</translation>
    </message>
    <message>
        <source>Move stage</source>
        <translation>Déplacer l'étape</translation>
    </message>
    <message>
        <source>Paste stage</source>
        <translation>Coller l'étape</translation>
    </message>
    <message>
        <source>Remove stage</source>
        <translation>Retirer l'étape</translation>
    </message>
    <message>
        <source>Split stage</source>
        <translation>Couper l'étape</translation>
    </message>
</context>
<context>
    <name>Stages</name>
    <message>
        <source>&amp;Insert after the selected</source>
        <translation>&amp;Insérer après l'étape choisie</translation>
    </message>
</context>
<context>
    <name>StandardPage</name>
    <message>
        <source>A higher ratio leaves less fat in the dry matter of the cheese, a lower one more.</source>
        <translation>Un rapport plus élevé laisse moins de gras dans l’extrait sec du fromage, un plus bas en laisse davantage.</translation>
    </message>
    <message>
        <source>A little leaner</source>
        <translation>Un peu plus maigre</translation>
    </message>
    <message>
        <source>A little richer</source>
        <translation>Un peu plus riche</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Tel quel</translation>
    </message>
    <message>
        <source>Cream holds</source>
        <translation>La crème contient</translation>
    </message>
    <message>
        <source>In the vat now: fat {0} %, protein {1} %, casein {2} %; protein to fat {3}, casein to fat {4}.</source>
        <translation>En cuve actuellement : matière grasse {0} %, protéines {1} %, caséine {2} % ; protéines sur matière grasse {3}, caséine sur matière grasse {4}.</translation>
    </message>
    <message>
        <source>Now {0} to 1, with {1} % fat. What is wanted lies at {2} % fat.</source>
        <translation>Maintenant {0} pour 1, avec {1} % de matière grasse. Ce qui est voulu se trouve à {2} %.</translation>
    </message>
    <message>
        <source>Outcomes as it is and so changed</source>
        <translation>Résultats tels quels et ainsi changés</translation>
    </message>
    <message>
        <source>Put {0} of cream in</source>
        <translation>Ajouter {0} de crème</translation>
    </message>
    <message>
        <source>Put {0} of skim in</source>
        <translation>Ajouter {0} de lait écrémé</translation>
    </message>
    <message>
        <source>Ratio of</source>
        <translation>Rapport de</translation>
    </message>
    <message>
        <source>Ratio wanted</source>
        <translation>Rapport voulu</translation>
    </message>
    <message>
        <source>Say both the fat and the protein, or neither.</source>
        <translation>Dites matière grasse et protéines, ou aucune des deux.</translation>
    </message>
    <message>
        <source>Skim holds</source>
        <translation>Le lait écrémé contient</translation>
    </message>
    <message>
        <source>So changed</source>
        <translation>Ainsi changé</translation>
    </message>
    <message>
        <source>Standardise</source>
        <translation>Standardiser</translation>
    </message>
    <message>
        <source>Standardise the milk</source>
        <translation>Standardiser le lait</translation>
    </message>
    <message>
        <source>Standardise to {0}</source>
        <translation>Standardiser à {0}</translation>
    </message>
    <message>
        <source>Such cream or skim can't bring it there.</source>
        <translation>Une telle crème ou un tel lait écrémé ne peut l'y amener.</translation>
    </message>
    <message>
        <source>Take {0} of cream off</source>
        <translation>Ôter {0} de crème</translation>
    </message>
    <message>
        <source>The milk stands there already: {0} to 1. Type another ratio to see the ways to it.</source>
        <translation>Le lait y est déjà : {0} pour 1. Tapez un autre rapport pour voir comment y arriver.</translation>
    </message>
    <message>
        <source>Usual for {0}: {1} of protein to 1 of fat. {2} ({3}, {4})</source>
        <translation>Habituel pour {0} : {1} de protéines pour 1 de matière grasse. {2} ({3}, {4})</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Voulu</translation>
    </message>
    <message>
        <source>casein to fat</source>
        <translation>caséine sur matière grasse</translation>
    </message>
    <message>
        <source>fat %</source>
        <translation>MG %</translation>
    </message>
    <message>
        <source>protein %</source>
        <translation>prot. %</translation>
    </message>
    <message>
        <source>protein to fat</source>
        <translation>protéines sur matière grasse</translation>
    </message>
    <message>
        <source>{0}: fat</source>
        <translation>{0} : matière grasse</translation>
    </message>
    <message>
        <source>{0}: protein</source>
        <translation>{0} : protéines</translation>
    </message>
    <message>
        <source>‹ Milk</source>
        <translation>‹ Lait</translation>
    </message>
</context>
<context>
    <name>Start</name>
    <message>
        <source>Bringing it inside limits and ranges …</source>
        <translation>Mise dans les limites et plages …</translation>
    </message>
    <message>
        <source>Bringing it inside the limits alone …</source>
        <translation>Mise dans les seules limites …</translation>
    </message>
    <message>
        <source>Looking for the nearest example …</source>
        <translation>Recherche de l'exemple le plus proche …</translation>
    </message>
    <message>
        <source>Setting it to the middle of the usual ranges …</source>
        <translation>Mise au milieu des plages usuelles …</translation>
    </message>
    <message>
        <source>no style</source>
        <translation>sans style</translation>
    </message>
</context>
<context>
    <name>StartPlace</name>
    <message>
        <source>Blank recipe</source>
        <translation>Recette vierge</translation>
    </message>
    <message>
        <source>Examples of a dairy we made up; each opens as a copy of your own</source>
        <translation>Exemples d'une laiterie de notre invention ; chacun s'ouvre comme une copie à vous</translation>
    </message>
    <message>
        <source>Go on with {0}</source>
        <translation>Continuer avec {0}</translation>
    </message>
    <message>
        <source>New from a style</source>
        <translation>Nouvelle d'après un style</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Ouvrir un fichier…</translation>
    </message>
    <message>
        <source>Recent recipes</source>
        <translation>Recettes récentes</translation>
    </message>
    <message>
        <source>The shortest make there is, from ripening to press, to build upon</source>
        <translation>La fabrication la plus courte, de la maturation à la presse, à compléter</translation>
    </message>
    <message>
        <source>What will you make?</source>
        <translation>Qu'allez-vous faire ?</translation>
    </message>
</context>
<context>
    <name>Style</name>
    <message>
        <source>{0} (own)</source>
        <translation>{0} (maison)</translation>
    </message>
</context>
<context>
    <name>StyleDocument</name>
    <message>
        <source>What was changed outside</source>
        <translation>Ce qui a été changé ailleurs</translation>
    </message>
    <message>
        <source>Work from last time</source>
        <translation>Travail de la dernière fois</translation>
    </message>
</context>
<context>
    <name>StyleMaker</name>
    <message>
        <source>A house style needs a name.</source>
        <translation>Un style maison a besoin d'un nom.</translation>
    </message>
    <message>
        <source>Batches that were liked: {0}. Their measured ranges; where nothing was measured, the forecast.</source>
        <translation>Fabrications appréciées : {0}. Leurs plages mesurées ; là où rien n'a été mesuré, la prévision.</translation>
    </message>
    <message>
        <source>Begin from</source>
        <translation>Partir de</translation>
    </message>
    <message>
        <source>Make it</source>
        <translation>Le créer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Name of the house style</source>
        <translation>Nom du style maison</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>So few say little of how far they spread.</source>
        <translation>Si peu n'apprennent guère leur dispersion.</translation>
    </message>
    <message>
        <source>as you would call the cheese</source>
        <translation>comme vous appelleriez le fromage</translation>
    </message>
    <message>
        <source>what this recipe is forecast to be</source>
        <translation>ce que cette recette doit donner</translation>
    </message>
    <message>
        <source>what was liked: batches of {0}</source>
        <translation>ce qui a plu : fabrications de {0}</translation>
    </message>
    <message>
        <source>with the limits of law and standards of {0}</source>
        <translation>avec les limites légales et normatives de {0}</translation>
    </message>
</context>
<context>
    <name>StylePage</name>
    <message>
        <source>A house style lies as a file beside the recipe, and this recipe is not saved yet.</source>
        <translation>Un style maison est un fichier à côté de la recette, et cette recette n'est pas encore enregistrée.</translation>
    </message>
    <message>
        <source>A limit of law or of a standard stays as it is; add a limit of your own.</source>
        <translation>Une limite de la loi ou d'une norme reste telle quelle ; ajoutez une limite à vous.</translation>
    </message>
    <message>
        <source>Add a gate</source>
        <translation>Ajouter un jalon</translation>
    </message>
    <message>
        <source>Add a limit</source>
        <translation>Ajouter une limite</translation>
    </message>
    <message>
        <source>Add a usual range</source>
        <translation>Ajouter une plage usuelle</translation>
    </message>
    <message>
        <source>All that this recipe has a figure for is there</source>
        <translation>Tout ce dont cette recette a un chiffre est là</translation>
    </message>
    <message>
        <source>Check against {0}</source>
        <translation>Contrôler selon {0}</translation>
    </message>
    <message>
        <source>Check this recipe against it</source>
        <translation>Contrôler cette recette d'après lui</translation>
    </message>
    <message>
        <source>House style</source>
        <translation>Style maison</translation>
    </message>
    <message>
        <source>House style to work on</source>
        <translation>Style maison à travailler</translation>
    </message>
    <message>
        <source>House style without {0}</source>
        <translation>Style maison sans {0}</translation>
    </message>
    <message>
        <source>House style: milk</source>
        <translation>Style maison : lait</translation>
    </message>
    <message>
        <source>House style: name</source>
        <translation>Style maison : nom</translation>
    </message>
    <message>
        <source>House style: remarks</source>
        <translation>Style maison : remarques</translation>
    </message>
    <message>
        <source>House style: {0}</source>
        <translation>Style maison : {0}</translation>
    </message>
    <message>
        <source>Milk of</source>
        <translation>Lait de</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Name of the house style</source>
        <translation>Nom du style maison</translation>
    </message>
    <message>
        <source>New…</source>
        <translation>Nouveau…</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Save the recipe…</source>
        <translation>Enregistrer la recette…</translation>
    </message>
    <message>
        <source>Take the row out</source>
        <translation>Retirer la ligne</translation>
    </message>
    <message>
        <source>Type an end with its unit, empty for open. Delete takes the row out.</source>
        <translation>Tapez une borne avec son unité, vide pour la laisser ouverte. Suppr retire la ligne.</translation>
    </message>
    <message>
        <source>Your own cheese: its own limits, usual ranges and gates, against which recipes are then checked.</source>
        <translation>Votre propre fromage : ses limites, ses plages usuelles et ses jalons, d'après lesquels les recettes sont ensuite contrôlées.</translation>
    </message>
    <message>
        <source>Your own range stands in place of all others of {0}.</source>
        <translation>Votre propre plage remplace toutes les autres de {0}.</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>remarques</translation>
    </message>
    <message>
        <source>{0}: every change is kept at once in {1}, beside the recipe.</source>
        <translation>{0} : chaque changement est gardé aussitôt dans {1}, à côté de la recette.</translation>
    </message>
    <message>
        <source>‹ Check</source>
        <translation>‹ Contrôle</translation>
    </message>
</context>
<context>
    <name>StyleTable</name>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>It runs backwards: from {0} to {1}.</source>
        <translation>Les bornes sont inversées : de {0} à {1}.</translation>
    </message>
    <message>
        <source>Limits, usual ranges and gates of the house style</source>
        <translation>Limites, plages usuelles et jalons du style maison</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation>Cette recette</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
</context>
<context>
    <name>TastingForm</name>
    <message>
        <source>0 to 10</source>
        <translation>0 à 10</translation>
    </message>
    <message>
        <source>A mark is a number from 0 to 10.</source>
        <translation>Une note est un nombre de 0 à 10.</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Pâte</translation>
    </message>
    <message>
        <source>Day of the tasting</source>
        <translation>Jour de la dégustation</translation>
    </message>
    <message>
        <source>Flavour</source>
        <translation>Goût</translation>
    </message>
    <message>
        <source>It can't be tasted before it was made, {0}.</source>
        <translation>On ne peut le déguster avant sa fabrication, le {0}.</translation>
    </message>
    <message>
        <source>Keep the tasting</source>
        <translation>Garder la dégustation</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspect</translation>
    </message>
    <message>
        <source>Make it so again</source>
        <translation>À refaire ainsi</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Mark, 0 to 10</source>
        <translation>Note, de 0 à 10</translation>
    </message>
    <message>
        <source>Not again</source>
        <translation>À ne pas refaire</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Tasted</source>
        <translation>Dégusté</translation>
    </message>
    <message>
        <source>Who tasted</source>
        <translation>Qui a dégusté</translation>
    </message>
    <message>
        <source>before it was made</source>
        <translation>avant la fabrication</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>{0} days old</source>
        <translation>{0} jours</translation>
    </message>
    <message>
        <source>“{0}” is no day; write it as 2024-05-07.</source>
        <translation>« {0} » n'est pas un jour ; écrivez-le comme 2024-05-07.</translation>
    </message>
</context>
<context>
    <name>TastingList</name>
    <message>
        <source>Correct the tasting of {0}</source>
        <translation>Corriger la dégustation du {0}</translation>
    </message>
    <message>
        <source>Correct…</source>
        <translation>Corriger…</translation>
    </message>
    <message>
        <source>Not tasted yet.</source>
        <translation>Pas encore dégusté.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Take back the tasting of {0}</source>
        <translation>Retirer la dégustation du {0}</translation>
    </message>
</context>
<context>
    <name>Tastings</name>
    <message>
        <source>again</source>
        <translation>à refaire</translation>
    </message>
    <message>
        <source>not again</source>
        <translation>à ne pas refaire</translation>
    </message>
    <message>
        <source>{0} days old</source>
        <translation>{0} jours</translation>
    </message>
</context>
<context>
    <name>Vat</name>
    <message>
        <source>cheese</source>
        <translation>fromage</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>crème</translation>
    </message>
    <message>
        <source>curd</source>
        <translation>caillé</translation>
    </message>
    <message>
        <source>drained curd</source>
        <translation>caillé égoutté</translation>
    </message>
    <message>
        <source>drawn {0} times as large from here</source>
        <translation>dessiné {0} fois plus grand à partir d'ici</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>gel</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>lait</translation>
    </message>
    <message>
        <source>whey</source>
        <translation>lactosérum</translation>
    </message>
</context>
<context>
    <name>VatsPage</name>
    <message>
        <source>&amp;Add a vat</source>
        <translation>&amp;Ajouter une cuve</translation>
    </message>
    <message>
        <source>&amp;Low, usual, high</source>
        <translation>&amp;Bas, usuel, haut</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>&amp;Take the vat away</source>
        <translation>&amp;Retirer la cuve</translation>
    </message>
    <message>
        <source>Back to the vats</source>
        <translation>Retour aux cuves</translation>
    </message>
    <message>
        <source>Give the setting another value first: vat A has it as it is.</source>
        <translation>Donnez d'abord au réglage une autre valeur : la cuve A l'a tel quel.</translation>
    </message>
    <message>
        <source>Milk in each</source>
        <translation>Lait dans chacune</translation>
    </message>
    <message>
        <source>Milk in each vat</source>
        <translation>Lait dans chaque cuve</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Outcomes of the vats</source>
        <translation>Résultats des cuves</translation>
    </message>
    <message>
        <source>Small vats side by side</source>
        <translation>Petites cuves côte à côte</translation>
    </message>
    <message>
        <source>Take its change into the &amp;recipe</source>
        <translation>Reprendre son changement dans la &amp;recette</translation>
    </message>
    <message>
        <source>Taken from a vat: {0}</source>
        <translation>Repris d'une cuve : {0}</translation>
    </message>
    <message>
        <source>The same make in each vat, and in each one thing changed: what comes of it?</source>
        <translation>La même fabrication dans chaque cuve, et dans chacune une chose changée : qu'en résulte-t-il ?</translation>
    </message>
    <message>
        <source>The vats, as printed</source>
        <translation>Les cuves, telles qu'imprimées</translation>
    </message>
    <message>
        <source>‹ Design</source>
        <translation>‹ Dessin</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>and {0} more</source>
        <translation>et {0} autres</translation>
    </message>
    <message>
        <source>met</source>
        <translation>respecté</translation>
    </message>
    <message>
        <source>near a limit</source>
        <translation>près d’une limite</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>non respecté</translation>
    </message>
</context>
<context>
    <name>VersionsPage</name>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Compare the two</source>
        <translation>Comparer les deux</translation>
    </message>
    <message>
        <source>Enter or a double click writes a note; two lines chosen with Ctrl are compared with each other. The files lie in {0}.</source>
        <translation>Entrée ou un double-clic écrit une note ; deux lignes choisies avec Ctrl se comparent entre elles. Les fichiers sont dans {0}.</translation>
    </message>
    <message>
        <source>Every save keeps what was there before, as plain files beside the recipe. None is kept yet.</source>
        <translation>Chaque enregistrement garde ce qui était là avant, en simples fichiers à côté de la recette. Aucun n'est encore gardé.</translation>
    </message>
    <message>
        <source>From version {0} to version {1}: {2}</source>
        <translation>De la version {0} à la version {1} : {2}</translation>
    </message>
    <message>
        <source>From version {0} to what is open: {1}</source>
        <translation>De la version {0} à ce qui est ouvert : {1}</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Open as a copy</source>
        <translation>Ouvrir comme copie</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Put beside in Compare</source>
        <translation>Mettre à côté dans Comparer</translation>
    </message>
    <message>
        <source>Save the recipe</source>
        <translation>Enregistrer la recette</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Enregistré</translation>
    </message>
    <message>
        <source>Saved versions, the newest first</source>
        <translation>Versions enregistrées, la plus récente d'abord</translation>
    </message>
    <message>
        <source>Version {0} is put back; undo takes it away again, saving keeps it.</source>
        <translation>La version {0} est remise ; annuler la retire, enregistrer la garde.</translation>
    </message>
    <message>
        <source>Version {0} is what is open.</source>
        <translation>La version {0} est ce qui est ouvert.</translation>
    </message>
    <message>
        <source>Version {0} put back</source>
        <translation>Version {0} remise</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versions</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Ce qui a changé</translation>
    </message>
    <message>
        <source>nothing but words and order</source>
        <translation>rien que des mots et l'ordre</translation>
    </message>
    <message>
        <source>‹ Design</source>
        <translation>‹ Dessin</translation>
    </message>
</context>
<context>
    <name>WholeChoice</name>
    <message>
        <source>Milk of</source>
        <translation>Lait de</translation>
    </message>
    <message>
        <source>Which kind of stage</source>
        <translation>Quelle sorte d’étape</translation>
    </message>
    <message>
        <source>Which stage</source>
        <translation>Quelle étape</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
    </message>
    <message>
        <source>&amp;Examples</source>
        <translation>E&amp;xemples</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>&amp;Recette</translation>
    </message>
    <message>
        <source>&amp;Stage</source>
        <translation>É&amp;tape</translation>
    </message>
    <message>
        <source>&amp;Teach</source>
        <translation>E&amp;nseigner</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Thème</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Dessin</translation>
    </message>
    <message>
        <source>Milk</source>
        <translation>Lait</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Récents</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Fiche</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>pas encore enregistré</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>rien encore</translation>
    </message>
    <message>
        <source>{0}[*] – {1} – Curdwright</source>
        <translation>{0}[*] – {1} – Curdwright</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>other words, by commas</source>
        <translation>autres mots, entre virgules</translation>
    </message>
    <message>
        <source>{0}, in other words</source>
        <translation>{0}, en d'autres mots</translation>
    </message>
</context>
<context>
    <name>WorthTable</name>
    <message>
        <source>1 stage alike</source>
        <translation>1 étape identique</translation>
    </message>
    <message>
        <source>Before the first stage</source>
        <translation>Avant la première étape</translation>
    </message>
    <message>
        <source>Differences and what each is worth</source>
        <translation>Différences et ce que vaut chacune</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En tout</translation>
    </message>
    <message>
        <source>Rest and rounding</source>
        <translation>Reste et arrondis</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Ce qui diffère</translation>
    </message>
    <message>
        <source>What goes only together</source>
        <translation>Ce qui ne va qu'ensemble</translation>
    </message>
    <message>
        <source>What rounding leaves, and what no single difference can say.</source>
        <translation>Ce que laissent les arrondis, et ce qu'aucune différence seule ne peut dire.</translation>
    </message>
    <message>
        <source>{0}
Weighed together with others, above.</source>
        <translation>{0}
Pesé avec d'autres, ci-dessus.</translation>
    </message>
    <message>
        <source>{0} (only in the open make)</source>
        <translation>{0} (seulement dans la fabrication ouverte)</translation>
    </message>
    <message>
        <source>{0} (only in the other make)</source>
        <translation>{0} (seulement dans l'autre fabrication)</translation>
    </message>
    <message>
        <source>{0} (only in {1})</source>
        <translation>{0} (seulement dans {1})</translation>
    </message>
    <message>
        <source>{0} against {1}</source>
        <translation>{0} contre {1}</translation>
    </message>
    <message>
        <source>{0} stages alike</source>
        <translation>{0} étapes identiques</translation>
    </message>
</context>
<context>
    <name>caution</name>
    <message>
        <source> from 10 mg/kg on</source>
        <translation> à partir de 10 mg/kg</translation>
    </message>
    <message>
        <source>A hard first load closes the rind and keeps whey in: press gently first.</source>
        <translation>Une première charge trop forte ferme la croûte et retient le lactosérum : pressez d'abord doucement.</translation>
    </message>
    <message>
        <source>A little calcium chloride helps a soft curd, up to 0.02 % of the milk.</source>
        <translation>Un peu de chlorure de calcium aide un caillé mou, jusqu'à 0,02 % du lait.</translation>
    </message>
    <message>
        <source>Above 50 °C more heat hardly dries the curd further.</source>
        <translation>Au-dessus de 50 °C, plus de chaleur ne sèche guère davantage le caillé.</translation>
    </message>
    <message>
        <source>Acid instead of a starter: nothing goes on souring or competing. Chill it at once, keep it cold and eat it soon.</source>
        <translation>De l'acide au lieu d'un ferment : rien ne continue d'acidifier ni de concurrencer. Refroidissez aussitôt, gardez au froid et mangez vite.</translation>
    </message>
    <message>
        <source>Beyond about 20 % a stronger brine salts hardly more: the face dries and closes.</source>
        <translation>Au-delà d'environ 20 %, une saumure plus forte ne sale guère plus : la surface sèche et se ferme.</translation>
    </message>
    <message>
        <source>Brine kept for long can harbour Listeria that stands salt: it touches every cheese. Skim it, keep it cold, have it tested. Gloves and eye cover when mixing it.</source>
        <translation>Une saumure gardée longtemps peut abriter des Listeria qui supportent le sel : elle touche chaque fromage. Écumez-la, gardez-la au froid, faites-la analyser. Gants et lunettes pour la préparer.</translation>
    </message>
    <message>
        <source>Calcium chloride {share:.3f} % of the milk; 0.02 % is the ceiling of the US and Codex texts.</source>
        <translation>Chlorure de calcium à {share:.3f} % du lait ; 0,02 % est le plafond des textes américain et du Codex.</translation>
    </message>
    <message>
        <source>Contains milk: it must be named on a label.</source>
        <translation>Contient du lait : à mentionner sur l'étiquette.</translation>
    </message>
    <message>
        <source>Curd milled or salted at pH {ph:.2f}, close to the {stop:.1f} above which the vat counts as subnormal. Titrate its whey: it should show 0.40 % or more.</source>
        <translation>Caillé broyé ou salé à pH {ph:.2f}, près du {stop:.1f} au-dessus duquel la cuve est tenue pour anormale. Titrez son lactosérum : il devrait montrer 0,40 % ou plus.</translation>
    </message>
    <message>
        <source>Curdled by heat and acid: the heat kills, but nothing protects afterwards. Keep it above 60 °C or chill it quickly; clean hands and cloths; eat it within days.</source>
        <translation>Caillé par la chaleur et l'acide : la chaleur tue, mais rien ne protège ensuite. Gardez-le au-dessus de 60 °C ou refroidissez-le vite ; mains et toiles propres ; à manger sous quelques jours.</translation>
    </message>
    <message>
        <source>Heated this fast a film closes on the grain and keeps whey in: not as dry as the heat alone would make it.</source>
        <translation>Chauffé aussi vite, le grain se coiffe d'une pellicule qui retient le lactosérum : moins sec que la chaleur seule ne le ferait.</translation>
    </message>
    <message>
        <source>Hot wax burns and catches fire: melt it in a water bath, never leave it, keep a lid and no water at hand.</source>
        <translation>La cire chaude brûle et prend feu : fondez-la au bain-marie, ne la quittez jamais, un couvercle sous la main et pas d'eau.</translation>
    </message>
    <message>
        <source>In {lost} of {count} draws of what is uncertain there is nothing yet for {names} to part with, so no bands can be given; part later, or draw the whey further.</source>
        <translation>Dans {lost} des {count} tirages de ce qui est incertain, il n'y a encore rien à séparer pour {names} ; on ne peut donc pas donner de fourchette. Séparez plus tard, ou soutirez davantage de lactosérum.</translation>
    </message>
    <message>
        <source>In {lost} of {count} draws of what is uncertain there is nothing yet for {names} to part with; the bands are those of the others.</source>
        <translation>Dans {lost} des {count} tirages de ce qui est incertain, il n'y a encore rien à séparer pour {names} ; les fourchettes sont celles des autres.</translation>
    </message>
    <message>
        <source>It holds half as much again of everything: more curd in the vat and the forms, less whey, a slower fall of pH for the same acid.</source>
        <translation>Il contient moitié plus de tout : plus de caillé dans la cuve et les moules, moins de lactosérum, une baisse de pH plus lente pour le même acide.</translation>
    </message>
    <message>
        <source>It sets faster and firmer than cow or goat milk, and firms on quickly: cut by the clock of flocculation, sooner and smaller.</source>
        <translation>Il caille plus vite et plus ferme que le lait de vache ou de chèvre et se raffermit vite : découpez à l'heure de la floculation, plus tôt et plus fin.</translation>
    </message>
    <message>
        <source>It sets slower and softer than sheep or buffalo milk: more rennet for the same time.</source>
        <translation>Il caille plus lentement et plus mou que le lait de brebis ou de bufflonne : plus de présure pour le même temps.</translation>
    </message>
    <message>
        <source>Its curd is firm and gives up whey slowly for its fat: expect a moister, fatter cheese at the same cut and cook.</source>
        <translation>Son caillé est ferme et rend lentement son lactosérum à cause de sa matière grasse : attendez un fromage plus humide et plus gras pour la même découpe et la même cuisson.</translation>
    </message>
    <message>
        <source>Its curd is softer and breaks easily: cut larger, stir more gently, and let it heal longer.</source>
        <translation>Son caillé est plus mou et se brise aisément : découpez plus gros, brassez plus doucement et laissez-le reposer plus longtemps.</translation>
    </message>
    <message>
        <source>Makers report anything from a tenth to a half less rennet; go by your own flocculation.</source>
        <translation>Les fabricants disent de un dixième à moitié moins de présure ; fiez-vous à votre propre floculation.</translation>
    </message>
    <message>
        <source>Mesophilic cultures work best near 33 °C: warmer than that slows the acid.</source>
        <translation>Les ferments mésophiles travaillent au mieux vers 33 °C : plus chaud ralentit l'acidification.</translation>
    </message>
    <message>
        <source>Milk withheld because of medicine can't be made into cheese.</source>
        <translation>Un lait écarté à cause d'un médicament ne peut devenir fromage.</translation>
    </message>
    <message>
        <source>NO ACID, hold it: still pH {ph:.2f} a day after the starter. The culture did not work: old, killed by heat, or stopped by medicine or phage. Do not sell or taste it.</source>
        <translation>PAS D'ACIDE, bloquez : encore à pH {ph:.2f} un jour après le ferment. Il n'a pas travaillé : vieux, tué par la chaleur, ou arrêté par un médicament ou des phages. Ne vendez pas, ne goûtez pas.</translation>
    </message>
    <message>
        <source>Never mix chlorine and acid cleaners (toxic gas); chlorine in the water also kills rennet.</source>
        <translation>Ne mélangez jamais nettoyants chlorés et acides (gaz toxique) ; le chlore dans l'eau tue aussi la présure.</translation>
    </message>
    <message>
        <source>No starter: nothing but cold, salt and heat holds back what grows. Chill it at once, keep it below 5 °C and eat it within days.</source>
        <translation>Pas de ferment : seuls le froid, le sel et la chaleur retiennent ce qui pousse. Refroidissez aussitôt, gardez sous 5 °C et mangez sous quelques jours.</translation>
    </message>
    <message>
        <source>Raw milk and {days:.0f} days of ageing in this plan: where the US rule binds it asks for at least {limit:.0f} at {room:.1f} °C or more, and colder days do not count.</source>
        <translation>Lait cru et {days:.0f} jours d'affinage dans ce plan : là où la règle américaine s'applique, elle en demande au moins {limit:.0f} à {room:.1f} °C ou plus, et les jours plus froids ne comptent pas.</translation>
    </message>
    <message>
        <source>Raw milk, as the law counts it. Where 60 days at 1.7 °C or more are asked, those 60 days are not a kill step: E. coli O157:H7 was still found in raw-milk Gouda and Cheddar after 270 days. Ask your authority; label it “made with raw milk” where that is the rule.</source>
        <translation>Lait cru au sens de la loi. Là où 60 jours à 1,7 °C ou plus sont demandés, ces 60 jours ne tuent pas : E. coli O157:H7 se trouvait encore dans du Gouda et du Cheddar au lait cru après 270 jours. Demandez à votre autorité ; étiquetez « au lait cru » là où c'est la règle.</translation>
    </message>
    <message>
        <source>SLOW VAT, hold it: curd milled or salted at pH {ph:.2f}; above {limit:.1f} its whey has less than about 0.40 % acid, the mark below which toxic vats were found. Test before sale. A good pH later lifts nothing.</source>
        <translation>CUVE LENTE, bloquez : caillé broyé ou salé à pH {ph:.2f} ; au-dessus de {limit:.1f} son lactosérum a moins d'environ 0,40 % d'acide, repère sous lequel des cuves toxiques ont été trouvées. Analysez avant la vente. Un bon pH plus tard n'y change rien.</translation>
    </message>
    <message>
        <source>SLOW VAT, hold it: pH {ph:.2f} six hours after the starter, where {family} should be at {limit:.1f} or below. Enterotoxin of staphylococci outlasts acid, salt and years of age. Do not sell or taste it before it is tested. Leave it unsalted and cool it to 4 °C at once. A good pH later lifts nothing.</source>
        <translation>CUVE LENTE, bloquez : pH {ph:.2f} six heures après le ferment, où {family} devrait être à {limit:.1f} ou moins. L'entérotoxine des staphylocoques survit à l'acide, au sel et à des années d'affinage. Ne vendez ni ne goûtez avant analyse. Laissez sans sel et refroidissez aussitôt à 4 °C. Un bon pH plus tard n'y change rien.</translation>
    </message>
    <message>
        <source>SLOW VAT, hold it: whey drawn at {acidity:.2f} % acid; {limit:.2f} % or less is subnormal for washed curd, toxic vats had 0.11-0.13 %. Test before sale. A good pH later lifts nothing.</source>
        <translation>CUVE LENTE, bloquez : lactosérum tiré à {acidity:.2f} % d'acide ; {limit:.2f} % ou moins est anormal pour un caillé lavé, les cuves toxiques avaient 0,11-0,13 %. Analysez avant la vente. Un bon pH plus tard n'y change rien.</translation>
    </message>
    <message>
        <source>SLOW VAT, hold it: {acidity:.2f} % acid at milling, less than {limit:.2f} %. Toxic vats had 0.16-0.35 %. Test before sale. A good pH later lifts nothing.</source>
        <translation>CUVE LENTE, bloquez : {acidity:.2f} % d'acide au broyage, moins de {limit:.2f} %. Les cuves toxiques avaient 0,16-0,35 %. Analysez avant la vente. Un bon pH plus tard n'y change rien.</translation>
    </message>
    <message>
        <source>SLOW VAT, hold it: {hours:.0f} warm hours (above {warm:.1f} °C) before pH {ph:.1f}. A cool lactic set is slow by nature, but not as slow as this. Do not sell or taste it before it is tested. A good pH later lifts nothing.</source>
        <translation>CUVE LENTE, bloquez : {hours:.0f} heures chaudes (au-dessus de {warm:.1f} °C) avant pH {ph:.1f}. Un caillage lactique au frais est lent par nature, mais pas à ce point. Ne vendez ni ne goûtez avant analyse. Un bon pH plus tard n'y change rien.</translation>
    </message>
    <message>
        <source>Soft or surface-ripened raw-milk cheese: pregnant people, those over 65, infants and anyone with weak immunity should not eat it. Say so where it is sold.</source>
        <translation>Fromage au lait cru à pâte molle ou à croûte vivante : les femmes enceintes, les plus de 65 ans, les nourrissons et les personnes peu immunisées ne devraient pas en manger. Dites-le au lieu de vente.</translation>
    </message>
    <message>
        <source>Sources disagree here. Makers hold that a higher multiple keeps more moisture in; measured, firmness at cutting did not change it. So a longer set counts here by its acid alone, and dries a little.</source>
        <translation>Les sources ne s'accordent pas ici. Les fabricants tiennent qu'un multiple plus élevé retient plus d'humidité ; mesurée, la fermeté au décaillage n'y changeait rien. Un caillage plus long ne compte donc ici que par son acide, et sèche un peu.</translation>
    </message>
    <message>
        <source>The milk stands warm for {hours:.1f} h before the starter goes in. Without acid everything in it grows; warm it later or sow earlier.</source>
        <translation>Le lait reste tiède {hours:.1f} h avant l'ensemencement. Sans acide, tout y pousse ; chauffez-le plus tard ou ensemencez plus tôt.</translation>
    </message>
    <message>
        <source>The vat may be slow: in one make of ten pH would still be {ph:.2f} six hours after the starter, above the {limit:.1f} at which {family} is held. Read pH at that hour.</source>
        <translation>La cuve peut être lente : dans une fabrication sur dix, le pH serait encore à {ph:.2f} six heures après le ferment, au-dessus du {limit:.1f} où {family} est bloqué. Lisez le pH à cette heure.</translation>
    </message>
    <message>
        <source>This is hot enough to stop the mesophilic culture: from here on less acid undoes what the heat dries.</source>
        <translation>C'est assez chaud pour arrêter le ferment mésophile : à partir d'ici, moins d'acide défait ce que la chaleur sèche.</translation>
    </message>
    <message>
        <source>Washed and bloomy rinds turn back to neutral, where Listeria grows: clean drains, boards and cloths first, test as your rules ask, warn people at risk.</source>
        <translation>Croûtes lavées et fleuries redeviennent neutres, et les Listeria y poussent : siphons, planches et toiles propres d'abord, analyses selon vos règles, avertissez les personnes à risque.</translation>
    </message>
    <message>
        <source>Water of {temp:.0f} °C scalds within seconds: insulated gloves, dry floor, nobody behind you.</source>
        <translation>Une eau à {temp:.0f} °C ébouillante en quelques secondes : gants isolants, sol sec, personne derrière vous.</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>céleri</translation>
    </message>
    <message>
        <source>cereals with gluten (barley, wheat)</source>
        <translation>céréales à gluten (orge, blé)</translation>
    </message>
    <message>
        <source>cooked cheese</source>
        <translation>fromage cuit</translation>
    </message>
    <message>
        <source>cool lactic set</source>
        <translation>caillage lactique au frais</translation>
    </message>
    <message>
        <source>curd washed after cooking</source>
        <translation>caillé lavé après cuisson</translation>
    </message>
    <message>
        <source>egg</source>
        <translation>œuf</translation>
    </message>
    <message>
        <source>egg (lysozyme)</source>
        <translation>œuf (lysozyme)</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>poisson</translation>
    </message>
    <message>
        <source>lupin</source>
        <translation>lupin</translation>
    </message>
    <message>
        <source>milled or dry-salted curd</source>
        <translation>caillé broyé ou salé à sec</translation>
    </message>
    <message>
        <source>mustard</source>
        <translation>moutarde</translation>
    </message>
    <message>
        <source>nuts</source>
        <translation>fruits à coque</translation>
    </message>
    <message>
        <source>pH {ph:.2f} six hours after the starter: {family} should be at {limit:.1f} or below by then. Above {stop:.1f} the vat is held.</source>
        <translation>pH {ph:.2f} six heures après le ferment : {family} devrait être alors à {limit:.1f} ou moins. Au-dessus de {stop:.1f}, la cuve est bloquée.</translation>
    </message>
    <message>
        <source>peanuts</source>
        <translation>arachides</translation>
    </message>
    <message>
        <source>sesame</source>
        <translation>sésame</translation>
    </message>
    <message>
        <source>soya</source>
        <translation>soja</translation>
    </message>
    <message>
        <source>sulphites</source>
        <translation>sulfites</translation>
    </message>
    <message>
        <source>uncooked soft or semi-hard cheese</source>
        <translation>fromage non cuit, à pâte molle ou demi-dure</translation>
    </message>
    <message>
        <source>warm lactic set</source>
        <translation>caillage lactique au chaud</translation>
    </message>
    <message>
        <source>{force:.0f} kg of force on one cheese ({kpa:.0f} kPa) is far above a hand press: check the unit or the decimal point.</source>
        <translation>{force:.0f} kg de force sur un fromage ({kpa:.0f} kPa) dépassent de loin une presse à main : vérifiez l'unité ou la virgule.</translation>
    </message>
    <message>
        <source>{hours:.0f} degree-hours (°F above 60) until pH 5.3, more than the {limit:.0f} allowed to fermented sausage. Borrowed: no such rule exists for cheese. It only ever adds this warning and never passes a cheese.</source>
        <translation>{hours:.0f} degrés-heures (°F au-dessus de 60) jusqu'à pH 5,3, plus que les {limit:.0f} permis au saucisson fermenté. Emprunté : il n'existe pas de telle règle pour le fromage. Elle ne fait qu'ajouter cet avertissement et n'admet jamais un fromage.</translation>
    </message>
    <message>
        <source>{hours:.0f} warm hours (above {warm:.1f} °C) before pH {ph:.1f}: slow for a lactic set; from {stop:.0f} h on it is held.</source>
        <translation>{hours:.0f} heures chaudes (au-dessus de {warm:.1f} °C) avant pH {ph:.1f} : lent pour un caillage lactique ; à partir de {stop:.0f} h il est bloqué.</translation>
    </message>
    <message>
        <source>{hung:.0f} kg to hang or stack on one cheese: never stack such a load by hand; use a guided press or a longer lever.</source>
        <translation>{hung:.0f} kg à suspendre ou empiler sur un fromage : n'empilez jamais une telle charge à la main ; prenez une presse guidée ou un levier plus long.</translation>
    </message>
    <message>
        <source>{name} is called pasteurised without its heat and time. Write them down: a listed pair is the only proof.</source>
        <translation>{name} est dit pasteurisé sans sa température ni sa durée. Notez-les : un couple de la liste est la seule preuve.</translation>
    </message>
    <message>
        <source>{name} is called pasteurised, but {sentence}</source>
        <translation>{name} est dit pasteurisé, mais : {sentence}</translation>
    </message>
    <message>
        <source>{name}: thermised milk (57-68 °C for 15 s or so) is heated against spoilage, not against disease; every listed pair lies above it.</source>
        <translation>{name} : un lait thermisé (57-68 °C pendant 15 s environ) est chauffé contre l'altération, non contre la maladie ; tout couple de la liste est au-dessus.</translation>
    </message>
    <message>
        <source>{name}: {sentence} In a vat the {minutes:.0f} min begin when the last milk is at heat, so filling time comes on top; the air above the milk at least 3 °C hotter, read at start and end.</source>
        <translation>{name} : {sentence} En cuve, les {minutes:.0f} min commencent quand le dernier lait est à température, le remplissage vient donc en plus ; l'air au-dessus du lait au moins 3 °C plus chaud, lu au début et à la fin.</translation>
    </message>
    <message>
        <source>{name}: {sentence} In flow, that is the slowest particle, with a device that turns back milk too cold, and a chart that is kept.</source>
        <translation>{name} : {sentence} En continu, il s'agit de la particule la plus lente, avec un dispositif qui renvoie le lait trop froid et un enregistrement conservé.</translation>
    </message>
    <message>
        <source>“{name}” brings {allergen}: an allergen that must be named on a label{more}.</source>
        <translation>« {name} » apporte : {allergen}. Un allergène à mentionner sur l'étiquette{more}.</translation>
    </message>
    <message>
        <source>“{name}” is a strong acid: acid into water and never the other way, gloves and eye cover, and away from chlorine.</source>
        <translation>« {name} » est un acide fort : l'acide dans l'eau, jamais l'inverse, gants et lunettes, et loin du chlore.</translation>
    </message>
    <message>
        <source>“{name}” is to change the temperature in {asked:.0f} min; this vat needs about {needed:.0f} min, and the forecast goes at its pace.</source>
        <translation>« {name} » doit changer la température en {asked:.0f} min ; il faut à cette cuve environ {needed:.0f} min, et la prévision va à son rythme.</translation>
    </message>
    <message>
        <source>“{name}” runs to its latest without reaching its end ({end}): pH {ph:.2f}, {temperature:.0f} °C by then.</source>
        <translation>« {name} » va jusqu'à sa limite sans atteindre sa fin ({end}) : pH {ph:.2f}, {temperature:.0f} °C à ce moment.</translation>
    </message>
    <message>
        <source>“{name}”: herbs, spices and leaves carry spores, moulds and Salmonella. Use treated dried ones, or blanch them; never put them in raw oil.</source>
        <translation>« {name} » : herbes, épices et feuilles portent spores, moisissures et salmonelles. Prenez-les séchées et traitées, ou blanchissez-les ; jamais dans l'huile crues.</translation>
    </message>
</context>
<context>
    <name>choice</name>
    <message>
        <source>acetic</source>
        <translation>acétique</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>acide</translation>
    </message>
    <message>
        <source>acidity</source>
        <translation>acidité</translation>
    </message>
    <message>
        <source>alpine</source>
        <translation>alpin</translation>
    </message>
    <message>
        <source>any</source>
        <translation>toute</translation>
    </message>
    <message>
        <source>aroma</source>
        <translation>aromatique</translation>
    </message>
    <message>
        <source>ash</source>
        <translation>cendrée</translation>
    </message>
    <message>
        <source>autumn</source>
        <translation>automne</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>sac</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloc</translation>
    </message>
    <message>
        <source>bloomy</source>
        <translation>fleurie</translation>
    </message>
    <message>
        <source>brine</source>
        <translation>saumure</translation>
    </message>
    <message>
        <source>buffalo</source>
        <translation>bufflonne</translation>
    </message>
    <message>
        <source>calcium chloride</source>
        <translation>chlorure de calcium</translation>
    </message>
    <message>
        <source>calf</source>
        <translation>veau</translation>
    </message>
    <message>
        <source>camel</source>
        <translation>chameau</translation>
    </message>
    <message>
        <source>cheese</source>
        <translation>fromage</translation>
    </message>
    <message>
        <source>chymosin</source>
        <translation>chymosine</translation>
    </message>
    <message>
        <source>citric</source>
        <translation>citrique</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>toile</translation>
    </message>
    <message>
        <source>coagulant</source>
        <translation>coagulant</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>enrobage</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>colorant</translation>
    </message>
    <message>
        <source>cow</source>
        <translation>vache</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>crème</translation>
    </message>
    <message>
        <source>curd</source>
        <translation>caillé</translation>
    </message>
    <message>
        <source>cylinder</source>
        <translation>cylindre</translation>
    </message>
    <message>
        <source>feel</source>
        <translation>au jugé</translation>
    </message>
    <message>
        <source>firmness</source>
        <translation>fermeté</translation>
    </message>
    <message>
        <source>floc multiple</source>
        <translation>multiple de floculation</translation>
    </message>
    <message>
        <source>flocculation multiple</source>
        <translation>multiple de floculation</translation>
    </message>
    <message>
        <source>goat</source>
        <translation>chèvre</translation>
    </message>
    <message>
        <source>herbs</source>
        <translation>herbes</translation>
    </message>
    <message>
        <source>high heat</source>
        <translation>chauffé haut</translation>
    </message>
    <message>
        <source>lactic</source>
        <translation>lactique</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>feuilles</translation>
    </message>
    <message>
        <source>lipase</source>
        <translation>lipase</translation>
    </message>
    <message>
        <source>loaf</source>
        <translation>pain</translation>
    </message>
    <message>
        <source>mesophilic</source>
        <translation>mésophile</translation>
    </message>
    <message>
        <source>microbial</source>
        <translation>microbien</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>lait</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mixte</translation>
    </message>
    <message>
        <source>mother</source>
        <translation>levain</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>naturelle</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pasteurised</source>
        <translation>pasteurisé</translation>
    </message>
    <message>
        <source>ph</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>végétal</translation>
    </message>
    <message>
        <source>pyramid</source>
        <translation>pyramide</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>cru</translation>
    </message>
    <message>
        <source>ripening culture</source>
        <translation>culture d'affinage</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>sel</translation>
    </message>
    <message>
        <source>sheep</source>
        <translation>brebis</translation>
    </message>
    <message>
        <source>spring</source>
        <translation>printemps</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>été</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>thermised</source>
        <translation>thermisé</translation>
    </message>
    <message>
        <source>thermophilic</source>
        <translation>thermophile</translation>
    </message>
    <message>
        <source>thermophilic rods</source>
        <translation>bâtonnets thermophiles</translation>
    </message>
    <message>
        <source>time</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavée</translation>
    </message>
    <message>
        <source>wax</source>
        <translation>cire</translation>
    </message>
    <message>
        <source>whey</source>
        <translation>lactosérum</translation>
    </message>
    <message>
        <source>whey off</source>
        <translation>lactosérum écoulé</translation>
    </message>
    <message>
        <source>whey run off</source>
        <translation>lactosérum écoulé</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>hiver</translation>
    </message>
    <message>
        <source>yoghurt</source>
        <translation>yaourt</translation>
    </message>
</context>
<context>
    <name>coat</name>
    <message>
        <source>85-95 % humidity at 10-14 °C, turned daily</source>
        <translation>85-95 % d'humidité à 10-14 °C, retourné chaque jour</translation>
    </message>
    <message>
        <source>90-95 % humidity, washed two or three times a week at first</source>
        <translation>90-95 % d'humidité, lavé deux ou trois fois par semaine au début</translation>
    </message>
    <message>
        <source>a bag spares the small gaps from mould</source>
        <translation>un sac protège les petits vides de la moisissure</translation>
    </message>
    <message>
        <source>a breathing coat</source>
        <translation>un enrobage respirant</translation>
    </message>
    <message>
        <source>a brushed coat does not bridge openings; mould grows in them behind it</source>
        <translation>un enrobage au pinceau ne ponte pas les ouvertures ; la moisissure pousse derrière</translation>
    </message>
    <message>
        <source>a cellar of about 13 °C and 85 %, turned daily for eight weeks and more</source>
        <translation>une cave d'environ 13 °C et 85 %, retourné chaque jour pendant huit semaines et plus</translation>
    </message>
    <message>
        <source>a closed face can be washed and keeps its smear</source>
        <translation>une face fermée peut être lavée et garde sa morge</translation>
    </message>
    <message>
        <source>a closed, turned wheel: a breathing plastic coat holds mould off while it dries slowly</source>
        <translation>une meule fermée et retournée : un enrobage plastique respirant écarte la moisissure pendant qu'elle sèche lentement</translation>
    </message>
    <message>
        <source>a firm wheel with a fair face: cloth and fat carry the mould outside it</source>
        <translation>une meule ferme à la face correcte : toile et graisse portent la moisissure à l'extérieur</translation>
    </message>
    <message>
        <source>a natural rind</source>
        <translation>une croûte naturelle</translation>
    </message>
    <message>
        <source>a poorly knit wheel does better sealed in a vacuum bag than on a natural rind, where every crevice lets mould in</source>
        <translation>une meule mal soudée est mieux scellée en sac sous vide que sur croûte naturelle, où chaque crevasse laisse entrer la moisissure</translation>
    </message>
    <message>
        <source>a room of 80-95 % humidity, by the rind wanted</source>
        <translation>une cave de 80-95 % d'humidité, selon la croûte voulue</translation>
    </message>
    <message>
        <source>a smear dries off below 90 % humidity</source>
        <translation>une morge sèche au-dessous de 90 % d'humidité</translation>
    </message>
    <message>
        <source>a soft cheese needs a mould or smear rather than a dry rind</source>
        <translation>un fromage mou veut une moisissure ou une morge plutôt qu'une croûte sèche</translation>
    </message>
    <message>
        <source>a soft cheese weeps in a bag</source>
        <translation>un fromage mou pleure en sac</translation>
    </message>
    <message>
        <source>a vacuum bag</source>
        <translation>un sac sous vide</translation>
    </message>
    <message>
        <source>a warm store speeds every gas former</source>
        <translation>une cave chaude hâte tout ce qui fait du gaz</translation>
    </message>
    <message>
        <source>a washed rind</source>
        <translation>une croûte lavée</translation>
    </message>
    <message>
        <source>a wet face does not take the coat</source>
        <translation>une face mouillée ne prend pas l'enrobage</translation>
    </message>
    <message>
        <source>a white mould rind</source>
        <translation>une croûte fleurie</translation>
    </message>
    <message>
        <source>an aroma culture makes gas from citrate</source>
        <translation>un ferment aromatique fait du gaz à partir du citrate</translation>
    </message>
    <message>
        <source>bring the room there</source>
        <translation>amenez la cave à ces valeurs</translation>
    </message>
    <message>
        <source>bring the room there before the cloth goes on</source>
        <translation>amenez la cave à ces valeurs avant de poser la toile</translation>
    </message>
    <message>
        <source>closed and dry, it takes wax, which stops most of the weight loss</source>
        <translation>fermé et sec, il prend la cire, qui arrête presque toute la perte de poids</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>toile</translation>
    </message>
    <message>
        <source>dry air cracks a bare face</source>
        <translation>l'air sec fend une face nue</translation>
    </message>
    <message>
        <source>dry air shrinks the wheel off its cloth</source>
        <translation>l'air sec rétrécit la meule sous sa toile</translation>
    </message>
    <message>
        <source>dry and turn it a day or two before the first coat</source>
        <translation>séchez et retournez-le un jour ou deux avant la première couche</translation>
    </message>
    <message>
        <source>dry it some days in moving air, turning it, before the wax</source>
        <translation>séchez-le quelques jours à l'air en mouvement, en le retournant, avant la cire</translation>
    </message>
    <message>
        <source>every crevice lets mould and mites in under a natural rind</source>
        <translation>chaque crevasse laisse entrer moisissures et acariens sous une croûte naturelle</translation>
    </message>
    <message>
        <source>eyes are wanted: propionic gas comes in the warm room</source>
        <translation>les ouvertures sont voulues : le gaz propionique vient en cave chaude</translation>
    </message>
    <message>
        <source>find it a colder place, or take another coat</source>
        <translation>trouvez-lui un lieu plus froid, ou prenez un autre enrobage</translation>
    </message>
    <message>
        <source>free whey pools in the bag, sours and rots the face</source>
        <translation>le lactosérum libre s'amasse dans le sac, aigrit et pourrit la face</translation>
    </message>
    <message>
        <source>gas blows the bag and splits the cheese</source>
        <translation>le gaz gonfle le sac et fend le fromage</translation>
    </message>
    <message>
        <source>gas lifts and splits wax</source>
        <translation>le gaz soulève et fend la cire</translation>
    </message>
    <message>
        <source>kept cold, 4-8 °C, 10 °C at the most</source>
        <translation>gardé au froid, 4-8 °C, 10 °C au plus</translation>
    </message>
    <message>
        <source>little salt, little acid and unheated milk: butyric spores may blow it weeks later</source>
        <translation>peu de sel, peu d'acide et lait non chauffé : les spores butyriques peuvent le faire gonfler des semaines plus tard</translation>
    </message>
    <message>
        <source>mend the salt first: longer in brine, or more on the curd next time</source>
        <translation>corrigez d'abord le sel : plus longtemps en saumure, ou plus sur le caillé la prochaine fois</translation>
    </message>
    <message>
        <source>mould finds its way through cloth into the openings</source>
        <translation>la moisissure passe à travers la toile dans les ouvertures</translation>
    </message>
    <message>
        <source>no free whey, the face dry to the hand</source>
        <translation>pas de lactosérum libre, la face sèche à la main</translation>
    </message>
    <message>
        <source>no free whey: nothing runs, the face is dry to the hand</source>
        <translation>pas de lactosérum libre : rien ne coule, la face est sèche à la main</translation>
    </message>
    <message>
        <source>no gas to come</source>
        <translation>pas de gaz à venir</translation>
    </message>
    <message>
        <source>no gas: no eyes wanted, no slow vat, no swelling in the first days</source>
        <translation>pas de gaz : pas d'ouvertures voulues, pas de cuve lente, pas de gonflement les premiers jours</translation>
    </message>
    <message>
        <source>no weight is lost and no damp room is needed, but no rind flavour comes either</source>
        <translation>pas de perte de poids et pas besoin de cave humide, mais pas de goût de croûte non plus</translation>
    </message>
    <message>
        <source>pH in its window a day after the starter</source>
        <translation>pH dans sa plage un jour après le ferment</translation>
    </message>
    <message>
        <source>pH is outside its window, and a bag keeps what is wrong in</source>
        <translation>le pH est hors de sa plage, et un sac garde le défaut dedans</translation>
    </message>
    <message>
        <source>press or hang on until nothing runs, wipe it and let the face dry before sealing</source>
        <translation>pressez ou suspendez jusqu'à ce que rien ne coule, essuyez et laissez sécher la face avant de sceller</translation>
    </message>
    <message>
        <source>raise the humidity (a lidded box for a wheel or two), or oil the face early</source>
        <translation>montez l'humidité (une boîte à couvercle pour une ou deux meules), ou huilez tôt la face</translation>
    </message>
    <message>
        <source>salt in moisture in its window</source>
        <translation>sel sur humidité dans sa plage</translation>
    </message>
    <message>
        <source>salt in moisture is outside its window</source>
        <translation>le sel sur humidité est hors de sa plage</translation>
    </message>
    <message>
        <source>soft and moist enough for a mould rind</source>
        <translation>assez mou et humide pour une croûte fleurie</translation>
    </message>
    <message>
        <source>the face dry before each coat</source>
        <translation>la face sèche avant chaque couche</translation>
    </message>
    <message>
        <source>the face is closed, so a rind can grow on it</source>
        <translation>la face est fermée, une croûte peut donc y pousser</translation>
    </message>
    <message>
        <source>the face is nearly closed; small gaps can be filled and smoothed in the first days</source>
        <translation>la face est presque fermée ; les petits vides peuvent être comblés et lissés les premiers jours</translation>
    </message>
    <message>
        <source>the smear runs into the openings and rots there</source>
        <translation>la morge coule dans les ouvertures et y pourrit</translation>
    </message>
    <message>
        <source>the vat is slow: coliforms and yeasts blow such cheese within two days</source>
        <translation>la cuve est lente : coliformes et levures font gonfler un tel fromage en deux jours</translation>
    </message>
    <message>
        <source>too moist for wax: it sweats and sours under it</source>
        <translation>trop humide pour la cire : il sue et aigrit dessous</translation>
    </message>
    <message>
        <source>too moist: the cloth stays wet and sticks</source>
        <translation>trop humide : la toile reste mouillée et colle</translation>
    </message>
    <message>
        <source>too warm: a sealed cheese is kept cold</source>
        <translation>trop chaud : un fromage scellé se garde au froid</translation>
    </message>
    <message>
        <source>until it is sealed, keep it cool and turned and look into the openings daily; what smells or shows mould is cut out, not sealed in</source>
        <translation>jusqu'au scellage, gardez-le au frais, retournez-le et regardez chaque jour dans les ouvertures ; ce qui sent ou moisit se coupe, ne se scelle pas</translation>
    </message>
    <message>
        <source>wait for the pH before sealing; a wheel whose acid never came is held, not sealed</source>
        <translation>attendez le pH avant de sceller ; une meule dont l'acide n'est jamais venu est bloquée, non scellée</translation>
    </message>
    <message>
        <source>wait with the wax until it has stayed flat for some weeks</source>
        <translation>attendez pour la cire qu'il soit resté plat quelques semaines</translation>
    </message>
    <message>
        <source>watch it for two weeks in the open before sealing</source>
        <translation>observez-le deux semaines à l'air avant de sceller</translation>
    </message>
    <message>
        <source>wax</source>
        <translation>cire</translation>
    </message>
    <message>
        <source>whey and air in the openings loosen wax, and mould grows under it</source>
        <translation>lactosérum et air dans les ouvertures décollent la cire, et la moisissure pousse dessous</translation>
    </message>
    <message>
        <source>whey still runs and would gather under the wax</source>
        <translation>le lactosérum coule encore et s'amasserait sous la cire</translation>
    </message>
    <message>
        <source>whey still runs: leave it in the form or press until it stops</source>
        <translation>le lactosérum coule encore : laissez-le au moule ou sous presse jusqu'à ce qu'il s'arrête</translation>
    </message>
    <message>
        <source>while the cheese is still warm, turn it, dress it anew and press on, longer and heavier, in a room of 25 °C or more; once it is cold, gaps stay: junctions never heal with age</source>
        <translation>tant que le fromage est chaud, retournez-le, rhabillez-le et continuez à presser, plus longtemps et plus fort, dans un local à 25 °C ou plus ; une fois froid, les vides restent : les soudures ne se referment pas en vieillissant</translation>
    </message>
    <message>
        <source>white mould dries out below 85 % humidity</source>
        <translation>la moisissure blanche se dessèche sous 85 % d'humidité</translation>
    </message>
    <message>
        <source>wild mould sits in the openings before the white one covers them</source>
        <translation>les moisissures sauvages s'installent dans les ouvertures avant que la blanche les couvre</translation>
    </message>
</context>
<context>
    <name>constant</name>
    <message>
        <source>acid freed by added calcium</source>
        <translation>acide libéré par le calcium ajouté</translation>
    </message>
    <message>
        <source>acid made by growing starter</source>
        <translation>acide produit par le levain qui croît</translation>
    </message>
    <message>
        <source>acid made by resting starter</source>
        <translation>acide produit par le levain au repos</translation>
    </message>
    <message>
        <source>acid that stops the cocci</source>
        <translation>acide qui arrête les coques</translation>
    </message>
    <message>
        <source>acid that stops the rods</source>
        <translation>acide qui arrête les bâtonnets</translation>
    </message>
    <message>
        <source>best pH of mesophilic growth</source>
        <translation>pH optimal de croissance mésophile</translation>
    </message>
    <message>
        <source>best pH of the rods</source>
        <translation>pH optimal des bâtonnets</translation>
    </message>
    <message>
        <source>best pH of the thermophilic cocci</source>
        <translation>pH optimal des coques thermophiles</translation>
    </message>
    <message>
        <source>best temperature of mesophilic growth</source>
        <translation>température optimale de croissance mésophile</translation>
    </message>
    <message>
        <source>best temperature of the rods</source>
        <translation>température optimale des bâtonnets</translation>
    </message>
    <message>
        <source>best temperature of the thermophilic cocci</source>
        <translation>température optimale des coques thermophiles</translation>
    </message>
    <message>
        <source>brine at which the whey driven out by salt is given</source>
        <translation>saumure pour laquelle le sérum chassé par le sel est donné</translation>
    </message>
    <message>
        <source>buffering of the casein</source>
        <translation>pouvoir tampon de la caséine</translation>
    </message>
    <message>
        <source>buffering of the milk as a whole</source>
        <translation>pouvoir tampon du lait dans son ensemble</translation>
    </message>
    <message>
        <source>buffering of the milk serum</source>
        <translation>pouvoir tampon du sérum du lait</translation>
    </message>
    <message>
        <source>calcium bound in the casein</source>
        <translation>calcium lié à la caséine</translation>
    </message>
    <message>
        <source>casein kept in acid curd</source>
        <translation>caséine gardée dans le caillé acide</translation>
    </message>
    <message>
        <source>casein kept in rennet curd</source>
        <translation>caséine gardée dans le caillé présure</translation>
    </message>
    <message>
        <source>change with warmth of the water curd keeps</source>
        <translation>variation avec la chaleur de l'eau que garde le caillé</translation>
    </message>
    <message>
        <source>cold below which curd keeps its whey</source>
        <translation>froid sous lequel le caillé garde son sérum</translation>
    </message>
    <message>
        <source>cold below which curd knits badly</source>
        <translation>froid sous lequel le caillé se soude mal</translation>
    </message>
    <message>
        <source>cold storage for half of its slowing of rennet</source>
        <translation>stockage au froid pour la moitié de son ralentissement de la présure</translation>
    </message>
    <message>
        <source>cooling in brine</source>
        <translation>refroidissement en saumure</translation>
    </message>
    <message>
        <source>cooling in still air</source>
        <translation>refroidissement dans l'air calme</translation>
    </message>
    <message>
        <source>curd temperature at which stretching is given</source>
        <translation>température du caillé à laquelle est donné le filage</translation>
    </message>
    <message>
        <source>curd water at which the calcium dissolves half as far</source>
        <translation>eau du caillé à laquelle le calcium se dissout deux fois moins</translation>
    </message>
    <message>
        <source>curdling sooner in whey than in milk</source>
        <translation>caillage plus tôt dans le lactosérum que dans le lait</translation>
    </message>
    <message>
        <source>delay until flocs are seen</source>
        <translation>retard avant que le floc se voie</translation>
    </message>
    <message>
        <source>draining by brisk stirring</source>
        <translation>égouttage par brassage vif</translation>
    </message>
    <message>
        <source>draining in the form by its own weight</source>
        <translation>égouttage en moule sous son propre poids</translation>
    </message>
    <message>
        <source>draining in the press</source>
        <translation>égouttage sous presse</translation>
    </message>
    <message>
        <source>draining of a drained bed of curd</source>
        <translation>égouttage d'un lit de caillé soutiré</translation>
    </message>
    <message>
        <source>draining of curd at rest under whey</source>
        <translation>égouttage du caillé au repos sous sérum</translation>
    </message>
    <message>
        <source>draining of lactic curd at rest under whey</source>
        <translation>égouttage du caillé lactique au repos sous sérum</translation>
    </message>
    <message>
        <source>draining of lactic curd between boards</source>
        <translation>égouttage du caillé lactique entre des planches</translation>
    </message>
    <message>
        <source>draining of lactic curd in forms</source>
        <translation>égouttage du caillé lactique en moules</translation>
    </message>
    <message>
        <source>draining of worked curd</source>
        <translation>égouttage du caillé travaillé</translation>
    </message>
    <message>
        <source>dry salt that stays in the curd</source>
        <translation>sel à sec qui reste dans le caillé</translation>
    </message>
    <message>
        <source>drying of a bare surface</source>
        <translation>séchage d'une surface nue</translation>
    </message>
    <message>
        <source>early load that counts as full pressure</source>
        <translation>première charge qui compte comme pleine pression</translation>
    </message>
    <message>
        <source>faster draining by a little rennet</source>
        <translation>égouttage plus rapide avec un peu de présure</translation>
    </message>
    <message>
        <source>fastest heating without a film</source>
        <translation>chauffage le plus rapide sans peau</translation>
    </message>
    <message>
        <source>fastest that acid curd can drain</source>
        <translation>vitesse maximale d'égouttage du caillé acide</translation>
    </message>
    <message>
        <source>fastest that grain and water even out</source>
        <translation>vitesse maximale d'équilibre entre grain et eau</translation>
    </message>
    <message>
        <source>fastest the whey can leave a grain</source>
        <translation>vitesse maximale de sortie du sérum d'un grain</translation>
    </message>
    <message>
        <source>fat lost in stretching</source>
        <translation>matière grasse perdue au filage</translation>
    </message>
    <message>
        <source>fat lost to the whey</source>
        <translation>matière grasse perdue dans le sérum</translation>
    </message>
    <message>
        <source>fat to casein at which the whey rate is given</source>
        <translation>rapport matière grasse/caséine auquel est donnée la vitesse du sérum</translation>
    </message>
    <message>
        <source>film on the grain from fast heating</source>
        <translation>peau du grain due à un chauffage rapide</translation>
    </message>
    <message>
        <source>firmer acid gel of heated milk</source>
        <translation>gel acide plus ferme d'un lait qui a été chauffé</translation>
    </message>
    <message>
        <source>firming time of the gel</source>
        <translation>temps de raffermissement du gel</translation>
    </message>
    <message>
        <source>firming time, microbial coagulant</source>
        <translation>temps de raffermissement, coagulant microbien</translation>
    </message>
    <message>
        <source>firming time, plant coagulant</source>
        <translation>temps de raffermissement, coagulant végétal</translation>
    </message>
    <message>
        <source>firmness of a gel in the end</source>
        <translation>fermeté finale du gel</translation>
    </message>
    <message>
        <source>firmness of an acid gel</source>
        <translation>fermeté d'un gel acide</translation>
    </message>
    <message>
        <source>flocculation time, buffalo milk</source>
        <translation>temps de floculation, lait de bufflonne</translation>
    </message>
    <message>
        <source>flocculation time, cow's milk</source>
        <translation>temps de floculation, lait de vache</translation>
    </message>
    <message>
        <source>flocculation time, goat's milk</source>
        <translation>temps de floculation, lait de chèvre</translation>
    </message>
    <message>
        <source>flocculation time, sheep's milk</source>
        <translation>temps de floculation, lait de brebis</translation>
    </message>
    <message>
        <source>galactose used by the rods</source>
        <translation>galactose utilisé par les bâtonnets</translation>
    </message>
    <message>
        <source>grain at which evening out is given</source>
        <translation>grain auquel est donné l'équilibre avec l'eau</translation>
    </message>
    <message>
        <source>grain at which the whey rate is given</source>
        <translation>grain auquel est donnée la vitesse du sérum</translation>
    </message>
    <message>
        <source>growth rate of mesophilic starter</source>
        <translation>vitesse de croissance du levain mésophile</translation>
    </message>
    <message>
        <source>growth rate of the rods</source>
        <translation>vitesse de croissance des bâtonnets</translation>
    </message>
    <message>
        <source>growth rate of thermophilic cocci</source>
        <translation>vitesse de croissance des coques thermophiles</translation>
    </message>
    <message>
        <source>heat at which whey protein joins the curd</source>
        <translation>chaleur à laquelle les protéines du sérum rejoignent le caillé</translation>
    </message>
    <message>
        <source>heat that sets pieces in scalding</source>
        <translation>chaleur qui fixe les morceaux à l'échaudage</translation>
    </message>
    <message>
        <source>heating of milk at which the whey rate is given</source>
        <translation>chauffage du lait pour lequel est donnée la vitesse du lactosérum</translation>
    </message>
    <message>
        <source>highest pH of mesophilic growth</source>
        <translation>pH maximal de croissance mésophile</translation>
    </message>
    <message>
        <source>highest pH of the rods</source>
        <translation>pH maximal des bâtonnets</translation>
    </message>
    <message>
        <source>highest pH of the thermophilic cocci</source>
        <translation>pH maximal des coques thermophiles</translation>
    </message>
    <message>
        <source>highest temperature of mesophilic growth</source>
        <translation>température maximale de croissance mésophile</translation>
    </message>
    <message>
        <source>highest temperature of the rods</source>
        <translation>température maximale des bâtonnets</translation>
    </message>
    <message>
        <source>highest temperature of the thermophilic cocci</source>
        <translation>température maximale des coques thermophiles</translation>
    </message>
    <message>
        <source>how acid speeds the whey</source>
        <translation>accélération de la sortie du sérum par l'acidité</translation>
    </message>
    <message>
        <source>how closing lactic curd lets less whey through</source>
        <translation>comment le caillé lactique qui se resserre laisse passer moins de sérum</translation>
    </message>
    <message>
        <source>how fast cells die at the most</source>
        <translation>vitesse à laquelle les cellules meurent au plus</translation>
    </message>
    <message>
        <source>how fast salt travels in cheese</source>
        <translation>vitesse du sel dans le fromage</translation>
    </message>
    <message>
        <source>how fat slows the whey</source>
        <translation>ralentissement de la sortie du sérum par la matière grasse</translation>
    </message>
    <message>
        <source>how firmness rises with casein</source>
        <translation>croissance de la fermeté avec la caséine</translation>
    </message>
    <message>
        <source>how heated milk slows the whey</source>
        <translation>comment le lait chauffé ralentit le lactosérum</translation>
    </message>
    <message>
        <source>how much faster salt travels in moister cheese</source>
        <translation>vitesse de plus du sel dans un fromage plus humide</translation>
    </message>
    <message>
        <source>how much more starter drained curd carries</source>
        <translation>charge supplémentaire de levain dans le caillé égoutté</translation>
    </message>
    <message>
        <source>how much of the cut still counts in a form</source>
        <translation>part de la taille du grain qui compte encore en moule</translation>
    </message>
    <message>
        <source>how sharply the closing curd slows</source>
        <translation>netteté du ralentissement du caillé qui se ferme</translation>
    </message>
    <message>
        <source>how smaller grains drain faster</source>
        <translation>égouttage plus rapide des petits grains</translation>
    </message>
    <message>
        <source>how smaller lumps of lactic curd drain faster</source>
        <translation>égouttage plus rapide des petits morceaux de caillé lactique</translation>
    </message>
    <message>
        <source>how steeply heat draws lactic curd together</source>
        <translation>à quel point la chaleur resserre le caillé lactique</translation>
    </message>
    <message>
        <source>how the cheese's shape cools</source>
        <translation>effet de la forme du fromage sur son refroidissement</translation>
    </message>
    <message>
        <source>how warmth speeds salt in cheese</source>
        <translation>accélération du sel par la chaleur</translation>
    </message>
    <message>
        <source>how warmth speeds the draining of hot acid curd</source>
        <translation>accélération par la chaleur de l'égouttage du caillé acide chaud</translation>
    </message>
    <message>
        <source>how warmth speeds the draining of lactic curd</source>
        <translation>accélération de l'égouttage lactique par la chaleur</translation>
    </message>
    <message>
        <source>how warmth speeds the whey</source>
        <translation>accélération de la sortie du sérum par la chaleur</translation>
    </message>
    <message>
        <source>how weight presses water out of hot acid curd</source>
        <translation>effet du poids sur l'eau du caillé acide chaud</translation>
    </message>
    <message>
        <source>how weight presses water out of lactic curd</source>
        <translation>effet du poids sur l'eau du caillé lactique</translation>
    </message>
    <message>
        <source>knit left after brief pressing</source>
        <translation>soudure restante d'un pressage bref</translation>
    </message>
    <message>
        <source>knit left in cold curd</source>
        <translation>soudure restante d'un caillé froid</translation>
    </message>
    <message>
        <source>knit left in curd worked into loose grains</source>
        <translation>soudure restante d'un caillé travaillé en grains libres</translation>
    </message>
    <message>
        <source>knit left in dry curd</source>
        <translation>soudure restante d'un caillé sec</translation>
    </message>
    <message>
        <source>knit left in sour curd</source>
        <translation>soudure restante d'un caillé trop acide</translation>
    </message>
    <message>
        <source>knit left in sweet salted curd</source>
        <translation>soudure restante d'un caillé salé doux</translation>
    </message>
    <message>
        <source>knit left in warm salted curd</source>
        <translation>soudure restante d'un caillé salé chaud</translation>
    </message>
    <message>
        <source>knit left when pressed hard at once</source>
        <translation>soudure restante d'un pressage fort d'emblée</translation>
    </message>
    <message>
        <source>knit left when pressed too lightly</source>
        <translation>soudure restante sous une pression trop faible</translation>
    </message>
    <message>
        <source>least pressure for salted curd</source>
        <translation>pression minimale d'un caillé salé</translation>
    </message>
    <message>
        <source>least pressure for unsalted curd</source>
        <translation>pression minimale d'un caillé non salé</translation>
    </message>
    <message>
        <source>less water held in hotter stretching</source>
        <translation>eau retenue en moins par un filage plus chaud</translation>
    </message>
    <message>
        <source>lowest pH of mesophilic growth</source>
        <translation>pH minimal de croissance mésophile</translation>
    </message>
    <message>
        <source>lowest pH of the rods</source>
        <translation>pH minimal des bâtonnets</translation>
    </message>
    <message>
        <source>lowest pH of the thermophilic cocci</source>
        <translation>pH minimal des coques thermophiles</translation>
    </message>
    <message>
        <source>lowest temperature of mesophilic growth</source>
        <translation>température minimale de croissance mésophile</translation>
    </message>
    <message>
        <source>lowest temperature of the rods</source>
        <translation>température minimale des bâtonnets</translation>
    </message>
    <message>
        <source>lowest temperature of the thermophilic cocci</source>
        <translation>température minimale des coques thermophiles</translation>
    </message>
    <message>
        <source>lump at which the lactic draining rate is given</source>
        <translation>morceau auquel est donnée la vitesse d'égouttage lactique</translation>
    </message>
    <message>
        <source>milk salts bound along with the calcium</source>
        <translation>sels du lait liés avec le calcium</translation>
    </message>
    <message>
        <source>moisture below which curd knits badly</source>
        <translation>humidité sous laquelle le caillé se soude mal</translation>
    </message>
    <message>
        <source>moisture from which curd knits by itself</source>
        <translation>humidité à partir de laquelle le caillé se soude seul</translation>
    </message>
    <message>
        <source>more fat lost by a finer cut</source>
        <translation>matière grasse perdue de plus par un décaillage plus fin</translation>
    </message>
    <message>
        <source>more fat lost from richer milk</source>
        <translation>matière grasse perdue de plus par un lait plus gras</translation>
    </message>
    <message>
        <source>more fat lost in hotter water</source>
        <translation>matière grasse perdue de plus dans une eau plus chaude</translation>
    </message>
    <message>
        <source>most starter that milk carries</source>
        <translation>charge maximale de levain dans le lait</translation>
    </message>
    <message>
        <source>pH above which salted curd knits badly</source>
        <translation>pH au-dessus duquel un caillé salé se soude mal</translation>
    </message>
    <message>
        <source>pH at which acid milk gels</source>
        <translation>pH auquel le lait acide prend</translation>
    </message>
    <message>
        <source>pH at which half of the calcium is dissolved</source>
        <translation>pH auquel la moitié du calcium est dissoute</translation>
    </message>
    <message>
        <source>pH at which heated milk clots well again</source>
        <translation>pH auquel le lait chauffé caille de nouveau bien</translation>
    </message>
    <message>
        <source>pH at which lactic curd is sour enough to drain</source>
        <translation>pH auquel le caillé lactique est assez acide pour s'égoutter</translation>
    </message>
    <message>
        <source>pH at which rennet curd turns into acid curd</source>
        <translation>pH auquel le caillé présure devient caillé acide</translation>
    </message>
    <message>
        <source>pH at which rennet is measured</source>
        <translation>pH auquel la présure est mesurée</translation>
    </message>
    <message>
        <source>pH at which the casein buffers</source>
        <translation>pH auxquels la caséine tamponne</translation>
    </message>
    <message>
        <source>pH at which the milk serum buffers</source>
        <translation>pH auxquels le sérum du lait tamponne</translation>
    </message>
    <message>
        <source>pH below which curd knits badly</source>
        <translation>pH sous lequel le caillé se soude mal</translation>
    </message>
    <message>
        <source>pressing time below which knitting suffers</source>
        <translation>temps de pressage sous lequel la soudure souffre</translation>
    </message>
    <message>
        <source>pressure at which the closing of the rind is given</source>
        <translation>pression à laquelle est donnée la fermeture de la croûte</translation>
    </message>
    <message>
        <source>pressure for half of what pressing can do</source>
        <translation>pression pour la moitié de l'effet du pressage</translation>
    </message>
    <message>
        <source>pressure that counts as hard</source>
        <translation>pression qui compte comme forte</translation>
    </message>
    <message>
        <source>pull of hot lactic curd on itself</source>
        <translation>contraction propre du caillé lactique chaud</translation>
    </message>
    <message>
        <source>quickening of rennet by calcium chloride</source>
        <translation>accélération de la présure par le chlorure de calcium</translation>
    </message>
    <message>
        <source>rate at which acid dissolves the calcium</source>
        <translation>vitesse à laquelle l'acide dissout le calcium</translation>
    </message>
    <message>
        <source>rate at which dry salt goes in</source>
        <translation>vitesse d'entrée du sel à sec</translation>
    </message>
    <message>
        <source>rate at which hot acid curd drains</source>
        <translation>vitesse d'égouttage du caillé acide chaud</translation>
    </message>
    <message>
        <source>rate at which lactic curd drains</source>
        <translation>vitesse d'égouttage du caillé lactique</translation>
    </message>
    <message>
        <source>rate at which salt enters in stretching</source>
        <translation>vitesse d'entrée du sel au filage</translation>
    </message>
    <message>
        <source>rate at which scalding shrinks the pieces</source>
        <translation>vitesse à laquelle l'échaudage resserre les morceaux</translation>
    </message>
    <message>
        <source>rate at which stretching takes up or gives off water</source>
        <translation>vitesse d'échange d'eau au filage</translation>
    </message>
    <message>
        <source>rate at which the press closes the rind</source>
        <translation>vitesse à laquelle la presse ferme la croûte</translation>
    </message>
    <message>
        <source>rennet needed for flocculation</source>
        <translation>présure qu'il faut pour la floculation</translation>
    </message>
    <message>
        <source>salt from which curd counts as salted</source>
        <translation>sel à partir duquel le caillé compte comme salé</translation>
    </message>
    <message>
        <source>salt in saturated brine</source>
        <translation>sel d'une saumure saturée</translation>
    </message>
    <message>
        <source>salt that stops mesophilic starter</source>
        <translation>sel qui arrête le levain mésophile</translation>
    </message>
    <message>
        <source>salt that stops the rods</source>
        <translation>sel qui arrête les bâtonnets</translation>
    </message>
    <message>
        <source>salt that stops the thermophilic cocci</source>
        <translation>sel qui arrête les coques thermophiles</translation>
    </message>
    <message>
        <source>score from which a cheese counts as closed</source>
        <translation>note à partir de laquelle un fromage est dit fermé</translation>
    </message>
    <message>
        <source>score from which a cheese counts as nearly closed</source>
        <translation>note à partir de laquelle un fromage est dit presque fermé</translation>
    </message>
    <message>
        <source>score from which a cheese counts as open</source>
        <translation>note à partir de laquelle un fromage est dit ouvert</translation>
    </message>
    <message>
        <source>setting sooner in heated milk</source>
        <translation>prise plus précoce d'un lait qui a été chauffé</translation>
    </message>
    <message>
        <source>setting sooner in warm milk</source>
        <translation>prise plus précoce dans un lait chaud</translation>
    </message>
    <message>
        <source>sharpness of the casein's buffering</source>
        <translation>netteté du pouvoir tampon de la caséine</translation>
    </message>
    <message>
        <source>slowing by sweet milk, camel chymosin</source>
        <translation>ralentissement par un lait peu acide, chymosine de chameau</translation>
    </message>
    <message>
        <source>slowing by sweet milk, microbial coagulant</source>
        <translation>ralentissement par un lait peu acide, coagulant microbien</translation>
    </message>
    <message>
        <source>slowing by sweet milk, plant coagulant</source>
        <translation>ralentissement par un lait peu acide, coagulant végétal</translation>
    </message>
    <message>
        <source>slowing of rennet by cold storage of the milk</source>
        <translation>ralentissement de la présure par le stockage au froid du lait</translation>
    </message>
    <message>
        <source>slowing of rennet by heated milk</source>
        <translation>ralentissement de la présure par le lait chauffé</translation>
    </message>
    <message>
        <source>slowing of rennet by sweet milk</source>
        <translation>ralentissement de la présure par un lait peu acide</translation>
    </message>
    <message>
        <source>span of heat over which whey protein joins the curd</source>
        <translation>étendue de chaleur où les protéines du sérum rejoignent le caillé</translation>
    </message>
    <message>
        <source>span of moisture over which curd comes to knit by itself</source>
        <translation>étendue d'humidité où le caillé se met à se souder seul</translation>
    </message>
    <message>
        <source>span of pH over which acid milk gels</source>
        <translation>étendue de pH où le lait acide prend</translation>
    </message>
    <message>
        <source>span of pH over which acid speeds the whey</source>
        <translation>plage de pH où l'acidité accélère la sortie du sérum</translation>
    </message>
    <message>
        <source>span of pH over which heated milk clots well again</source>
        <translation>étendue de pH où le lait chauffé se remet à bien cailler</translation>
    </message>
    <message>
        <source>span of pH over which hot whey clears</source>
        <translation>étendue de pH sur laquelle le lactosérum chaud s'éclaircit</translation>
    </message>
    <message>
        <source>span of pH over which rennet curd turns into acid curd</source>
        <translation>étendue de pH où le caillé présure devient caillé acide</translation>
    </message>
    <message>
        <source>span of pH over which the calcium dissolves</source>
        <translation>étendue de pH où le calcium se dissout</translation>
    </message>
    <message>
        <source>span of pH over which the whey clears</source>
        <translation>étendue de pH où le sérum s'éclaircit</translation>
    </message>
    <message>
        <source>span of salt over which curd comes to count as salted</source>
        <translation>étendue de sel où le caillé se met à compter comme salé</translation>
    </message>
    <message>
        <source>span of the dry limit of knitting</source>
        <translation>étendue du seuil de sécheresse de la soudure</translation>
    </message>
    <message>
        <source>span of the early load that counts as full</source>
        <translation>étendue de la première charge qui compte comme pleine</translation>
    </message>
    <message>
        <source>span of the limit of brief pressing</source>
        <translation>étendue du seuil de pressage bref</translation>
    </message>
    <message>
        <source>span of the limit of hard pressing</source>
        <translation>étendue du seuil de pressage fort</translation>
    </message>
    <message>
        <source>span of the limit of light pressing</source>
        <translation>étendue du seuil de pressage léger</translation>
    </message>
    <message>
        <source>span of the pH limits of knitting</source>
        <translation>étendue des seuils de pH de la soudure</translation>
    </message>
    <message>
        <source>span of the temperature limits of knitting</source>
        <translation>étendue des seuils de température de la soudure</translation>
    </message>
    <message>
        <source>starter that leaves with the whey</source>
        <translation>levain qui part avec le sérum</translation>
    </message>
    <message>
        <source>still layer of brine at the rind</source>
        <translation>couche de saumure immobile à la croûte</translation>
    </message>
    <message>
        <source>strength of lactic acid (pKa)</source>
        <translation>force de l'acide lactique (pKa)</translation>
    </message>
    <message>
        <source>strength up to which stronger brine salts faster</source>
        <translation>concentration jusqu'à laquelle une saumure plus forte sale plus vite</translation>
    </message>
    <message>
        <source>sugar at which souring is half as fast</source>
        <translation>sucre auquel l'acidification est deux fois plus lente</translation>
    </message>
    <message>
        <source>syneresis, the rate at which curd gives off whey</source>
        <translation>synérèse, vitesse à laquelle le caillé rend son sérum</translation>
    </message>
    <message>
        <source>temperature at which killing times are given</source>
        <translation>température à laquelle sont donnés les temps de destruction</translation>
    </message>
    <message>
        <source>temperature at which the whey rate is given</source>
        <translation>température à laquelle est donnée la vitesse du sérum</translation>
    </message>
    <message>
        <source>time for grain and wash water to even out</source>
        <translation>temps d'équilibre entre grain et eau de lavage</translation>
    </message>
    <message>
        <source>time in which full pressure comes too soon</source>
        <translation>temps dans lequel la pleine pression vient trop tôt</translation>
    </message>
    <message>
        <source>time in which stretching loses most fat</source>
        <translation>temps dans lequel le filage perd le plus de matière grasse</translation>
    </message>
    <message>
        <source>time that kills nine in ten mesophilic cells</source>
        <translation>temps qui tue neuf cellules mésophiles sur dix</translation>
    </message>
    <message>
        <source>time that kills nine in ten rods</source>
        <translation>temps qui tue neuf bâtonnets sur dix</translation>
    </message>
    <message>
        <source>time that kills nine in ten thermophilic cocci</source>
        <translation>temps qui tue neuf coques thermophiles sur dix</translation>
    </message>
    <message>
        <source>warmer by this, cells die ten times as fast</source>
        <translation>plus chaud d'autant, les cellules meurent dix fois plus vite</translation>
    </message>
    <message>
        <source>warmth above which salted curd knits badly</source>
        <translation>chaleur au-dessus de laquelle un caillé salé se soude mal</translation>
    </message>
    <message>
        <source>warmth beyond which whey leaves no faster</source>
        <translation>température au-delà de laquelle le sérum ne sort pas plus vite</translation>
    </message>
    <message>
        <source>warmth carried through cheese</source>
        <translation>chaleur conduite par le fromage</translation>
    </message>
    <message>
        <source>warmth from which curd stretches</source>
        <translation>chaleur à partir de laquelle le caillé file</translation>
    </message>
    <message>
        <source>warmth held by cheese</source>
        <translation>chaleur contenue par le fromage</translation>
    </message>
    <message>
        <source>warmth held by milk</source>
        <translation>chaleur contenue par le lait</translation>
    </message>
    <message>
        <source>warmth held by water</source>
        <translation>chaleur contenue par l'eau</translation>
    </message>
    <message>
        <source>water at which the closing curd drains half as fast</source>
        <translation>eau à laquelle le caillé qui se ferme s'égoutte deux fois moins vite</translation>
    </message>
    <message>
        <source>water at which the draining rate of lactic curd is given</source>
        <translation>eau pour laquelle la vitesse d'égouttage du caillé lactique est donnée</translation>
    </message>
    <message>
        <source>water bound to the casein</source>
        <translation>eau liée à la caséine</translation>
    </message>
    <message>
        <source>water drawn in from weak brine</source>
        <translation>eau reprise d'une saumure faible</translation>
    </message>
    <message>
        <source>water kept by curd ladled too sweet</source>
        <translation>eau gardée par un caillé moulé trop doux</translation>
    </message>
    <message>
        <source>water kept by curd of heated milk</source>
        <translation>eau gardée par le caillé d'un lait chauffé</translation>
    </message>
    <message>
        <source>water kept by curd soured too little</source>
        <translation>eau gardée par un caillé trop peu acidifié</translation>
    </message>
    <message>
        <source>water of the cheese that takes part in brining</source>
        <translation>part de l'eau du fromage qui participe au saumurage</translation>
    </message>
    <message>
        <source>water that acid curd keeps in the end</source>
        <translation>eau que le caillé acide garde à la fin</translation>
    </message>
    <message>
        <source>water that hot acid curd keeps in the end</source>
        <translation>eau que le caillé acide chaud garde à la fin</translation>
    </message>
    <message>
        <source>water that lactic curd keeps in the end</source>
        <translation>eau que le caillé lactique garde à la fin</translation>
    </message>
    <message>
        <source>water that pressed curd keeps in the end</source>
        <translation>eau que le caillé pressé garde à la fin</translation>
    </message>
    <message>
        <source>water that scalded curd holds</source>
        <translation>eau que retient le caillé échaudé</translation>
    </message>
    <message>
        <source>water that stretched curd holds</source>
        <translation>eau que retient le caillé filé</translation>
    </message>
    <message>
        <source>weight of cheese for its size</source>
        <translation>poids du fromage pour sa taille</translation>
    </message>
    <message>
        <source>weight of curd afloat in its whey</source>
        <translation>poids du caillé qui baigne dans son sérum</translation>
    </message>
    <message>
        <source>weight of curd on itself in the form</source>
        <translation>poids du caillé sur lui-même dans le moule</translation>
    </message>
    <message>
        <source>weight of hung curd on itself</source>
        <translation>poids du caillé suspendu sur lui-même</translation>
    </message>
    <message>
        <source>whey driven out by salt</source>
        <translation>sérum chassé par le sel</translation>
    </message>
    <message>
        <source>whey kept in by a closed rind</source>
        <translation>sérum retenu par une croûte fermée</translation>
    </message>
    <message>
        <source>whey kept in by a film on the grain</source>
        <translation>sérum retenu par une peau du grain</translation>
    </message>
    <message>
        <source>whey protein caught in the curd</source>
        <translation>protéines du sérum prises dans le caillé</translation>
    </message>
</context>
<context>
    <name>designer</name>
    <message>
        <source>
[bold]Branch {branch_id}[/bold]</source>
        <translation>
[bold]Branche {branch_id}[/bold]</translation>
    </message>
    <message>
        <source>
[bold]What each difference is worth[/bold], the greatest first</source>
        <translation>
[bold]Ce que vaut chaque différence[/bold], la plus grande d'abord</translation>
    </message>
    <message>
        <source>
[bold]{rule}[/bold]</source>
        <translation>
[bold]{rule}[/bold]</translation>
    </message>
    <message>
        <source>  nothing changed</source>
        <translation>  rien de changé</translation>
    </message>
    <message>
        <source> (and {outside} more)</source>
        <translation> (et {outside} de plus)</translation>
    </message>
    <message>
        <source> (by feel)</source>
        <translation> (au jugé)</translation>
    </message>
    <message>
        <source> (may lie from {low} to {high})</source>
        <translation> (peut être de {low} à {high})</translation>
    </message>
    <message>
        <source> ({rennet_imcu_per_l:.1f} IMCU/L)</source>
        <translation> ({rennet_imcu_per_l:.1f} IMCU/L)</translation>
    </message>
    <message>
        <source> Did you mean {near}?</source>
        <translation> Vouliez-vous dire {near} ?</translation>
    </message>
    <message>
        <source> It holds {solids_not_fat:.1f} % solids not fat; above {skim_solids_limit_pct:g} % is much.</source>
        <translation> Il contient {solids_not_fat:.1f} % d'extrait sec dégraissé ; plus de {skim_solids_limit_pct:g} %, c'est beaucoup.</translation>
    </message>
    <message>
        <source> Milk: {sentence}</source>
        <translation> Lait : {sentence}</translation>
    </message>
    <message>
        <source> There are: {known}.</source>
        <translation> Il y a : {known}.</translation>
    </message>
    <message>
        <source> after {after}</source>
        <translation> après {after}</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source> and {sourer:.2f} pH {sourer2} at 24 h</source>
        <translation> et finit {sourer:.2f} pH {sourer2} à 24 h</translation>
    </message>
    <message>
        <source> at this fat</source>
        <translation> pour ce gras</translation>
    </message>
    <message>
        <source> because the milk is not pasteurised (60 days is not a kill step)</source>
        <translation> parce que le lait n'est pas pasteurisé (60 jours ne tuent pas les germes)</translation>
    </message>
    <message>
        <source> of the {of}</source>
        <translation> ({of})</translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
    <message>
        <source> per 100 kg</source>
        <translation> pour 100 kg</translation>
    </message>
    <message>
        <source> to </source>
        <translation> à </translation>
    </message>
    <message>
        <source> {minutes:.0f} min more ends {moved:.1f} points {way}.</source>
        <translation> {minutes:.0f} min de plus donnent {moved:.1f} points {way}.</translation>
    </message>
    <message>
        <source> {name} is made of {milk} milk.</source>
        <translation> {name} se fait de lait de {milk}.</translation>
    </message>
    <message>
        <source>({low} to {high})</source>
        <translation>({low} à {high})</translation>
    </message>
    <message>
        <source>, cheeses side by side share it</source>
        <translation>, les fromages côte à côte se la partagent</translation>
    </message>
    <message>
        <source>, not above {high_c},</source>
        <translation>, sans dépasser {high_c},</translation>
    </message>
    <message>
        <source>, only if: </source>
        <translation>, seulement si : </translation>
    </message>
    <message>
        <source>, planned {value}</source>
        <translation>, prévu {value}</translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, puis </translation>
    </message>
    <message>
        <source>. Against {coat}, as planned: {speaks_against}</source>
        <translation>. Contre {coat}, comme prévu : {speaks_against}</translation>
    </message>
    <message>
        <source>1 page written to {path}</source>
        <translation>1 page écrite dans {path}</translation>
    </message>
    <message>
        <source>8 in 10 inside</source>
        <translation>8 sur 10 dans</translation>
    </message>
    <message>
        <source>8 makes in 10 fall inside</source>
        <translation>8 fabrications sur 10 y tombent</translation>
    </message>
    <message>
        <source>; </source>
        <translation> ; </translation>
    </message>
    <message>
        <source>; did you mean “{near}”?</source>
        <translation> ; vouliez-vous dire « {near} » ?</translation>
    </message>
    <message>
        <source>; {kg:.3f} g is too little to weigh: stir {weigh_kg:g} g into {into_l:g} mL of sterile milk and give {take_l:.1f} mL of that</source>
        <translation> ; {kg:.3f} g, c'est trop peu à peser : délayez {weigh_kg:g} g dans {into_l:g} mL de lait stérile et donnez-en {take_l:.1f} mL</translation>
    </message>
    <message>
        <source>; {litres:.2f} mL is too little to measure: let 1 mL down to 10 mL with cool water and give {given:.1f} mL of that</source>
        <translation> ; {litres:.2f} mL, c'est trop peu à mesurer : étendez 1 mL à 10 mL d'eau fraîche et donnez-en {given:.1f} mL</translation>
    </message>
    <message>
        <source>= {hung} hung on a lever of {lever:g}</source>
        <translation>= {hung} suspendus à un levier de {lever:g}</translation>
    </message>
    <message>
        <source>= {hung} laid on</source>
        <translation>= {hung} posés dessus</translation>
    </message>
    <message>
        <source>A brine at {temp_c:g} °C weighs between {weak:.0f} and {strong:.0f} kg per m³.</source>
        <translation>Une saumure à {temp_c:g} °C pèse entre {weak:.0f} et {strong:.0f} kg par m³.</translation>
    </message>
    <message>
        <source>A brine of {temp:.0f} °C lies outside the {low:.0f}-{high:.0f} °C at which the pace of salt was measured.</source>
        <translation>Une saumure à {temp:.0f} °C est hors des {low:.0f}-{high:.0f} °C où la vitesse du sel a été mesurée.</translation>
    </message>
    <message>
        <source>A gate stands on one of {curves}, at one of {moments}.</source>
        <translation>Un jalon se pose sur : {curves}, à : {moments}.</translation>
    </message>
    <message>
        <source>A house style needs a name with letters in it.</source>
        <translation>Un style maison a besoin d'un nom avec des lettres.</translation>
    </message>
    <message>
        <source>A limit speaks of one of: {composition}; not of “{quantity}”.</source>
        <translation>Une limite parle de : {composition} ; non de « {quantity} ».</translation>
    </message>
    <message>
        <source>A mark goes from 0 to {best:g}, not {mark:g}.</source>
        <translation>Une note va de 0 à {best:g}, pas {mark:g}.</translation>
    </message>
    <message>
        <source>A relative humidity of {rh:g} % has no dew point.</source>
        <translation>Une humidité relative de {rh:g} % n'a pas de point de rosée.</translation>
    </message>
    <message>
        <source>A step less</source>
        <translation>Un cran de moins</translation>
    </message>
    <message>
        <source>A step more</source>
        <translation>Un cran de plus</translation>
    </message>
    <message>
        <source>A style from batches needs at least one batch with figures.</source>
        <translation>Un style tiré de lots demande au moins un lot chiffré.</translation>
    </message>
    <message>
        <source>About {share:.0f} % of the whey protein of this milk is denatured by heat: with rennet it sets softly, and how much more whey its curd holds is a rough estimate.</source>
        <translation>Environ {share:.0f} % des protéines solubles de ce lait sont dénaturées par la chaleur : avec la présure il prend mollement, et ce que son caillé retient de lactosérum en plus n'est qu'une estimation grossière.</translation>
    </message>
    <message>
        <source>Acid-and-heat curd drains by a law that rests on four cheeses (ricotta, chhana, paneer, Queso blanco); take moisture and yield as a first guess.</source>
        <translation>Le caillé acide-chaleur s'égoutte selon une loi qui repose sur quatre fromages (ricotta, chhana, paneer, Queso blanco) ; prenez humidité et rendement pour une première approche.</translation>
    </message>
    <message>
        <source>After the vat</source>
        <translation>Après la cuve</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Alike in both</source>
        <translation>Identique dans les deux</translation>
    </message>
    <message>
        <source>All that is wanted is so already: {figures}.</source>
        <translation>Tout ce qui est voulu l'est déjà : {figures}.</translation>
    </message>
    <message>
        <source>As {name} asks for it: {stages}.</source>
        <translation>Comme {name} le demande : {stages}.</translation>
    </message>
    <message>
        <source>At pH {ph:.1f} and {temp:.0f} °C acid has curdled only about {share:.0f} % of it; the rest goes with the whey. It takes more acid, or more heat.</source>
        <translation>À pH {ph:.1f} et {temp:.0f} °C l'acide n'en a caillé qu'environ {share:.0f} % ; le reste part avec le lactosérum. Il faut plus d'acide, ou plus de chaleur.</translation>
    </message>
    <message>
        <source>At pH {ph:.1f} the curd is past its stretch: it turns short and loses fat.</source>
        <translation>À pH {ph:.1f} le caillé a dépassé son filage : il devient court et perd de la matière grasse.</translation>
    </message>
    <message>
        <source>At pH {ph:.1f} the curd still holds {calcium:.0f} mg of bound calcium per g of casein; above about {limit:.0f} it tears instead of stretching. Let it sour further.</source>
        <translation>À pH {ph:.1f} le caillé retient encore {calcium:.0f} mg de calcium lié par g de caséine ; au-dessus d'environ {limit:.0f} il se déchire au lieu de filer. Laissez-le acidifier davantage.</translation>
    </message>
    <message>
        <source>At the middle of the style</source>
        <translation>Au milieu du style</translation>
    </message>
    <message>
        <source>At the vat</source>
        <translation>À la cuve</translation>
    </message>
    <message>
        <source>Both cheeses</source>
        <translation>Les deux fromages</translation>
    </message>
    <message>
        <source>Both makes do the same in every stage.</source>
        <translation>Les deux fabrications font la même chose à chaque étape.</translation>
    </message>
    <message>
        <source>Calcium mg/g</source>
        <translation>Calcium mg/g</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>Change one setting for a moister cheese. What else would change with it?</source>
        <translation>Changez un réglage pour un fromage plus humide. Qu'est-ce qui changerait d'autre ?</translation>
    </message>
    <message>
        <source>Cheese at 24 h</source>
        <translation>Fromage à 24 h</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>Clock as planned. Write down what is read when a stage ends.</source>
        <translation>Heures comme prévu. Notez ce qui est lu à la fin d'une étape.</translation>
    </message>
    <message>
        <source>Curd too soft at the end of the cook: {step} warmer{limit} ends {drier:.1f} points {way}</source>
        <translation>Caillé trop mou en fin de chauffage : {step} de plus{limit} donne {drier:.1f} points {way}</translation>
    </message>
    <message>
        <source>Cut off and keep with the wheels</source>
        <translation>À découper et garder avec les meules</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Different, but not felt in these figures</source>
        <translation>Différent, mais non senti dans ces chiffres</translation>
    </message>
    <message>
        <source>Does not meet {rule}: {label}, {sentence}{more}.</source>
        <translation>Ne respecte pas {rule} : {label}, {sentence}{more}.</translation>
    </message>
    <message>
        <source>Draw what you expect; then plot what you read.</source>
        <translation>Dessinez ce que vous attendez ; pointez ensuite ce que vous lisez.</translation>
    </message>
    <message>
        <source>Drawn from the example “{name}”, its settings at the middle of the usual ranges of {name2}.</source>
        <translation>Tiré de l'exemple « {name} », ses réglages au milieu des plages usuelles de {name2}.</translation>
    </message>
    <message>
        <source>FDM points</source>
        <translation>G/S points</translation>
    </message>
    <message>
        <source>Finish h:min</source>
        <translation>Fin h:min</translation>
    </message>
    <message>
        <source>First {name}</source>
        <translation>Premier {name}</translation>
    </message>
    <message>
        <source>Floc early or late: cut at {value:g} × floc. Floc {cuts}.</source>
        <translation>Floculation tôt ou tard : décailler à {value:g} × floc. Floc {cuts}.</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Forecast inside the limits</source>
        <translation>Prévision dans les limites</translation>
    </message>
    <message>
        <source>Forecast inside the limits and usual ranges: {how}.</source>
        <translation>Prévision dans les limites et plages usuelles : {how}.</translation>
    </message>
    <message>
        <source>From milk in the vat.</source>
        <translation>Depuis le lait en cuve.</translation>
    </message>
    <message>
        <source>Gets worse</source>
        <translation>Empire</translation>
    </message>
    <message>
        <source>Give the form first: a load becomes a pressure by the face of the cheese.</source>
        <translation>Donnez d'abord le moule : une charge devient une pression par la face du fromage.</translation>
    </message>
    <message>
        <source>Guess first, then read.</source>
        <translation>Deviner d'abord, lire ensuite.</translation>
    </message>
    <message>
        <source>Heat treatment</source>
        <translation>Traitement thermique</translation>
    </message>
    <message>
        <source>House limits</source>
        <translation>Limites maison</translation>
    </message>
    <message>
        <source>In a sentence each</source>
        <translation>En une phrase chacun</translation>
    </message>
    <message>
        <source>In brackets: against A.</source>
        <translation>Entre parenthèses : par rapport à A.</translation>
    </message>
    <message>
        <source>In brackets: where 8 in 10 makes lie.</source>
        <translation>Entre parenthèses : là où se trouvent 8 fabrications sur 10.</translation>
    </message>
    <message>
        <source>In the way</source>
        <translation>En travers</translation>
    </message>
    <message>
        <source>In the way: {why}.</source>
        <translation>En travers : {why}.</translation>
    </message>
    <message>
        <source>In which stage does the curd lose most whey? How would you see it?</source>
        <translation>À quelle étape le caillé perd-il le plus de lactosérum ? Comment le verriez-vous ?</translation>
    </message>
    <message>
        <source>Knit {word}: </source>
        <translation>Soudure {word} : </translation>
    </message>
    <message>
        <source>Knit {word}: kept in brine, it needs no coat.</source>
        <translation>Soudure {word} : gardé en saumure, il n'a pas besoin d'enrobage.</translation>
    </message>
    <message>
        <source>Lactic curd is warmed to {temp:.0f} °C here; its drainage is known up to {limit:.0f} °C.</source>
        <translation>Le caillé lactique est chauffé à {temp:.0f} °C ici ; son égouttage est connu jusqu'à {limit:.0f} °C.</translation>
    </message>
    <message>
        <source>Lactic curd: the few published makes came within about 3 points of moisture of this law; take moisture and yield with that.</source>
        <translation>Caillé lactique : les rares fabrications publiées étaient à environ 3 points d'humidité de cette loi ; prenez humidité et rendement ainsi.</translation>
    </message>
    <message>
        <source>Last tasting</source>
        <translation>Dernière dégustation</translation>
    </message>
    <message>
        <source>Late or early?</source>
        <translation>Tard ou tôt ?</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Limits are not met.</source>
        <translation>Les limites ne sont pas respectées.</translation>
    </message>
    <message>
        <source>MISSES</source>
        <translation>MANQUÉ</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Fabriqué</translation>
    </message>
    <message>
        <source>Made from 1 batch that was liked.</source>
        <translation>Fait d'après 1 fabrication qui a plu.</translation>
    </message>
    <message>
        <source>Made from {count} batches that were liked.</source>
        <translation>Fait d'après {count} fabrications qui ont plu.</translation>
    </message>
    <message>
        <source>Made from {name}.</source>
        <translation>Tiré de {name}.</translation>
    </message>
    <message>
        <source>Made from {of}.</source>
        <translation>Tiré de {of}.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Meets the listed pair {temp_c:g} °C for {seconds} ({rule}), if the air above the milk and its slowest particle were that hot for that long.</source>
        <translation>Répond au couple de la liste {temp_c:g} °C pendant {seconds} ({rule}), si l'air au-dessus du lait et sa particule la plus lente ont été aussi chauds aussi longtemps.</translation>
    </message>
    <message>
        <source>Milk</source>
        <translation>Lait</translation>
    </message>
    <message>
        <source>Moisture points</source>
        <translation>Humidité points</translation>
    </message>
    <message>
        <source>Name the other recipe, --style, --version or --lane (these two at most twice); one of the four.</source>
        <translation>Nommez l'autre recette, --style, --version ou --lane (ces deux au plus deux fois) ; l'un des quatre.</translation>
    </message>
    <message>
        <source>No limit of {name} applies to this recipe.</source>
        <translation>Aucune limite de {name} ne s'applique à cette recette.</translation>
    </message>
    <message>
        <source>No made batch is noted.</source>
        <translation>Aucune fabrication n'est notée.</translation>
    </message>
    <message>
        <source>No mix of {low_pct} % and {high_pct} % gives {target_pct} %.</source>
        <translation>Aucun mélange de {low_pct} % et {high_pct} % ne donne {target_pct} %.</translation>
    </message>
    <message>
        <source>No window: {why}</source>
        <translation>Pas de fenêtre : {why}</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Not inside the limits</source>
        <translation>Pas dans les limites</translation>
    </message>
    <message>
        <source>Not reached; the nearest is {figures}: {how}.</source>
        <translation>Pas atteint ; au plus près : {figures} : {how}.</translation>
    </message>
    <message>
        <source>Not reached; this is the nearest.</source>
        <translation>Pas atteint ; voici le plus proche.</translation>
    </message>
    <message>
        <source>Not so: {words}.</source>
        <translation>Pas ainsi : {words}.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Nothing in this recipe moves it.</source>
        <translation>Rien dans cette recette ne le fait bouger.</translation>
    </message>
    <message>
        <source>Nothing is formed here, so there is no face to coat.</source>
        <translation>Rien n'est moulé ici, il n'y a donc pas de face à enrober.</translation>
    </message>
    <message>
        <source>Nothing is written; write for example “{example}”.</source>
        <translation>Rien n'est écrit ; écrivez par exemple « {example} ».</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>Of a branch only outcomes can be wanted: --branch goes with --want.</source>
        <translation>D'une branche, on ne peut vouloir que des résultats : --branch va avec --want.</translation>
    </message>
    <message>
        <source>On the amounts</source>
        <translation>Sur les quantités</translation>
    </message>
    <message>
        <source>Once the whey is off, little can be put right.</source>
        <translation>Une fois le lactosérum tiré, on ne corrige plus grand-chose.</translation>
    </message>
    <message>
        <source>Over each other</source>
        <translation>Superposées</translation>
    </message>
    <message>
        <source>Per 100 kg milk {verb} {share:.2f} kg {what} ({fat_pct:g} % fat, {protein_pct:.2f} % protein): fat {fat:.2f} %, protein {protein:.2f} %, protein to fat {protein2:.2f}.</source>
        <translation>Pour 100 kg de lait, {verb} {share:.2f} kg de {what} ({fat_pct:g} % de matière grasse, {protein_pct:.2f} % de protéines) : matière grasse {fat:.2f} %, protéines {protein:.2f} %, protéines sur matière grasse {protein2:.2f}.</translation>
    </message>
    <message>
        <source>Plan of the make: 1 page in {path}</source>
        <translation>Fiche de fabrication : 1 page dans {path}</translation>
    </message>
    <message>
        <source>Plan of the make: {count} pages in {path}</source>
        <translation>Fiche de fabrication : {count} pages dans {path}</translation>
    </message>
    <message>
        <source>Plot what you read.</source>
        <translation>Pointez ce que vous lisez.</translation>
    </message>
    <message>
        <source>Plot what you read: a cross each.</source>
        <translation>Pointez ce que vous lisez : une croix chacun.</translation>
    </message>
    <message>
        <source>Preparing the model, once ...</source>
        <translation>Préparation du modèle, une seule fois...</translation>
    </message>
    <message>
        <source>Quality</source>
        <translation>Qualité</translation>
    </message>
    <message>
        <source>Ranges are in the way ({names}).</source>
        <translation>Des plages sont en travers ({names}).</translation>
    </message>
    <message>
        <source>Reached.</source>
        <translation>Atteint.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Recette</translation>
    </message>
    <message>
        <source>Rennet at {temp:.0f} °C lies outside the {low:.0f}-{high:.0f} °C the setting law knows.</source>
        <translation>L'emprésurage à {temp:.0f} °C est hors des {low:.0f}-{high:.0f} °C que connaît la loi de coagulation.</translation>
    </message>
    <message>
        <source>Right way, {off} off: {words}.</source>
        <translation>Bon sens, à {off} près : {words}.</translation>
    </message>
    <message>
        <source>Right, and near: {words}.</source>
        <translation>Juste, et tout près : {words}.</translation>
    </message>
    <message>
        <source>Right: {words}.</source>
        <translation>Juste : {words}.</translation>
    </message>
    <message>
        <source>S/M points</source>
        <translation>S/H points</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>STOP</translation>
    </message>
    <message>
        <source>Save the recipe first: a house style lies beside it.</source>
        <translation>Enregistrez d'abord la recette : un style maison est à côté d'elle.</translation>
    </message>
    <message>
        <source>Say what changes: --change ID.FIELD=VALUE, for example --change cut.cut_mm=6mm.</source>
        <translation>Dites ce qui change : --change ID.CHAMP=VALEUR, par exemple --change cut.cut_mm=6mm.</translation>
    </message>
    <message>
        <source>Say what is wanted in one way: --want, --meet or --first.</source>
        <translation>Dites ce qui est voulu d'une seule façon : --want, --meet ou --first.</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Sheet for learners, with targets</source>
        <translation>Feuille pour apprenants, avec les cibles</translation>
    </message>
    <message>
        <source>Sheet for learners, without targets</source>
        <translation>Feuille pour apprenants, sans les cibles</translation>
    </message>
    <message>
        <source>Something in Curdwright itself is wrong ({name}). Please report it with the file {kept}.</source>
        <translation>Quelque chose ne va pas dans Curdwright même ({name}). Merci de le signaler avec le fichier {kept}.</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Still outside</source>
        <translation>Encore dehors</translation>
    </message>
    <message>
        <source>Sure? {value} is far {side} what is usual{where}: {usual_is}. Check the unit or the decimal point.</source>
        <translation>Sûr ? {value} est bien {side} l'usage{where} : {usual_is}. Vérifiez l'unité ou la virgule.</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>Texture of both: {bodies}.</source>
        <translation>Texture des deux : {bodies}.</translation>
    </message>
    <message>
        <source>Texture of both: {body}.</source>
        <translation>Texture des deux : {body}.</translation>
    </message>
    <message>
        <source>Texture: {bodies} → {bodies2}.</source>
        <translation>Texture : {bodies} → {bodies2}.</translation>
    </message>
    <message>
        <source>Texture: {left} ({left_name}); {right} ({right_name}).</source>
        <translation>Texture : {left} ({left_name}) ; {right} ({right_name}).</translation>
    </message>
    <message>
        <source>That hangs on the milk: standardise its protein to fat.</source>
        <translation>Cela tient au lait : standardisez son rapport protéines sur matière grasse.</translation>
    </message>
    <message>
        <source>The brine is at {strength_pct:g} % already; to weaken it to {wanted_pct:g} % add water.</source>
        <translation>La saumure est déjà à {strength_pct:g} % ; pour l'abaisser à {wanted_pct:g} %, ajoutez de l'eau.</translation>
    </message>
    <message>
        <source>The brine is at {strength_pct:g} %; to strengthen it to {wanted_pct:g} % add salt.</source>
        <translation>La saumure est à {strength_pct:g} % ; pour la monter à {wanted_pct:g} %, ajoutez du sel.</translation>
    </message>
    <message>
        <source>The cheese is likely {word}.</source>
        <translation>Le fromage sera sans doute {word}.</translation>
    </message>
    <message>
        <source>The cheese is likely {word}: {reason}</source>
        <translation>Le fromage sera sans doute {word} : {reason}</translation>
    </message>
    <message>
        <source>The cheese is likely {word}; what costs it most: {reason}</source>
        <translation>Le fromage sera sans doute {word} ; ce qui lui coûte le plus : {reason}</translation>
    </message>
    <message>
        <source>The curd begins to drain at pH {ph:.1f}; the drainage of lactic curd is known below {limit:.1f}.</source>
        <translation>Le caillé commence à s'égoutter à pH {ph:.1f} ; l'égouttage du caillé lactique est connu sous {limit:.1f}.</translation>
    </message>
    <message>
        <source>The curd reaches only {temp:.0f} °C in this water; below about {limit:.0f} °C it does not flow. It takes hotter water, or more of it.</source>
        <translation>Le caillé n'atteint que {temp:.0f} °C dans cette eau ; sous environ {limit:.0f} °C il ne flue pas. Il faut de l'eau plus chaude, ou davantage.</translation>
    </message>
    <message>
        <source>The curve</source>
        <translation>La courbe</translation>
    </message>
    <message>
        <source>The forecast kept with a batch can't be read.</source>
        <translation>La prévision gardée avec une fabrication ne peut pas être lue.</translation>
    </message>
    <message>
        <source>The forecast lies inside the limits of {names}{sure}. Closest: {label}, {margin}. Only an analysis of the cheese can show it.</source>
        <translation>La prévision est dans les limites de {names}{sure}. Au plus près : {label}, {margin}. Seule une analyse du fromage peut le montrer.</translation>
    </message>
    <message>
        <source>The forecast lies inside the limits.</source>
        <translation>La prévision est dans les limites.</translation>
    </message>
    <message>
        <source>The greatest first; the parts add up.</source>
        <translation>La plus grande d'abord ; les parts s'additionnent.</translation>
    </message>
    <message>
        <source>The ledger of batches has format {format}, newer than this program reads.</source>
        <translation>Le registre des fabrications a le format {format}, plus récent que ce que lit ce programme.</translation>
    </message>
    <message>
        <source>The ledger of batches{where} can't be used: {error}.</source>
        <translation>Le registre des fabrications{where} ne peut pas être utilisé : {error}.</translation>
    </message>
    <message>
        <source>The lock on {names} is in the way.</source>
        <translation>Le blocage est en travers : {names}.</translation>
    </message>
    <message>
        <source>The make</source>
        <translation>La fabrication</translation>
    </message>
    <message>
        <source>The make drawn</source>
        <translation>La fabrication dessinée</translation>
    </message>
    <message>
        <source>The milk</source>
        <translation>Le lait</translation>
    </message>
    <message>
        <source>The milk is cut {cut:.0f} min after the coagulant and flocculates only after {floc:.0f}: it has not set, and what is forecast is curd of a gel. It takes more coagulant, more time, or more warmth.</source>
        <translation>Le lait est découpé {cut:.0f} min après le coagulant et ne flocule qu'après {floc:.0f} : il n'a pas pris, et la prévision est celle du caillé d'un gel. Il faut plus de coagulant, plus de temps ou plus de chaleur.</translation>
    </message>
    <message>
        <source>The milk is cut {cut:.0f} min after the coagulant and has not even flocculated: what is forecast is curd of a gel. It takes more coagulant, more time, or more warmth.</source>
        <translation>Le lait est découpé {cut:.0f} min après le coagulant et n'a même pas floculé : la prévision est celle du caillé d'un gel. Il faut plus de coagulant, plus de temps ou plus de chaleur.</translation>
    </message>
    <message>
        <source>The milks differ in amount, so doses read per 100 kg of milk.</source>
        <translation>Les laits diffèrent en quantité, les doses se lisent donc pour 100 kg de lait.</translation>
    </message>
    <message>
        <source>The pictures could not be made: {error}.</source>
        <translation>Les images n'ont pu être faites : {error}.</translation>
    </message>
    <message>
        <source>The pieces reach only {temp:.0f} °C in this bath; below about {limit:.0f} °C they shrink little and stay soft. It takes a hotter bath, a longer one, or smaller pieces.</source>
        <translation>Les pièces n'atteignent que {temp:.0f} °C dans ce bain ; au-dessous d'environ {limit:.0f} °C, elles se contractent peu et restent molles. Il faut un bain plus chaud, plus long, ou de plus petites pièces.</translation>
    </message>
    <message>
        <source>The plan could not be written to {path}: {error}.</source>
        <translation>La fiche n'a pu être écrite dans {path} : {error}.</translation>
    </message>
    <message>
        <source>The plan could not be written to {target}: {error}.</source>
        <translation>La fiche n'a pu être écrite dans {target} : {error}.</translation>
    </message>
    <message>
        <source>The plan is a PDF; give it a name that ends in .pdf, not “{name}”.</source>
        <translation>La fiche est un PDF ; donnez-lui un nom qui finit par .pdf, non « {name} ».</translation>
    </message>
    <message>
        <source>The plan is drawn with Qt, and Qt's libraries are not all there ({why}). On Debian: apt-get install {packages}</source>
        <translation>La fiche se dessine avec Qt, et les bibliothèques de Qt ne sont pas toutes là ({why}). Sur Debian : apt-get install {packages}</translation>
    </message>
    <message>
        <source>The range of {what} runs backwards: from {low:g} to {high:g}.</source>
        <translation>La plage de {what} est inversée : de {low:g} à {high:g}.</translation>
    </message>
    <message>
        <source>The recipe is saved, but its version could not be kept: {why}.</source>
        <translation>La recette est enregistrée, mais sa version n'a pu être gardée : {why}.</translation>
    </message>
    <message>
        <source>The recipe names no style; add --style with one of: {known}.</source>
        <translation>La recette ne nomme pas de style ; ajoutez --style avec l'un de : {known}.</translation>
    </message>
    <message>
        <source>The style can't be written to {path}: {strerror}.</source>
        <translation>Le style ne peut être écrit dans {path} : {strerror}.</translation>
    </message>
    <message>
        <source>The style file {name} can't be read: {error}.</source>
        <translation>Le fichier de style {name} ne peut être lu : {error}.</translation>
    </message>
    <message>
        <source>The two makes do the same.</source>
        <translation>Les deux fabrications font la même chose.</translation>
    </message>
    <message>
        <source>The vat is held for slow acid; nothing is coated or sold before it is released. </source>
        <translation>La cuve est retenue pour acidité lente ; rien n'est enrobé ni vendu avant sa libération. </translation>
    </message>
    <message>
        <source>There is a house style of that name already: {file}.</source>
        <translation>Il y a déjà un style maison de ce nom : {file}.</translation>
    </message>
    <message>
        <source>There is no batch {number} in the ledger.</source>
        <translation>Il n'y a pas de fabrication {number} dans le registre.</translation>
    </message>
    <message>
        <source>There is no branch “{said}”; there are: {known}.</source>
        <translation>Il n'y a pas de branche « {said} » ; il y a : {known}.</translation>
    </message>
    <message>
        <source>There is no display here, so this is the forecast, the check and the plan.</source>
        <translation>Il n'y a pas d'écran ici, voici donc la prévision, le contrôle et la fiche.</translation>
    </message>
    <message>
        <source>There is no example of {name}; look at every stage before you trust it.</source>
        <translation>Il n'y a pas d'exemple de {name} ; regardez chaque étape avant de vous y fier.</translation>
    </message>
    <message>
        <source>There is no language “{key}”; there are {known}.</source>
        <translation>Il n'y a pas de langue « {key} » ; il y a {known}.</translation>
    </message>
    <message>
        <source>There is no ledger {ledger}.</source>
        <translation>Il n'y a pas de registre {ledger}.</translation>
    </message>
    <message>
        <source>There is no reading “{quantity}”.</source>
        <translation>Il n'y a pas de mesure « {quantity} ».</translation>
    </message>
    <message>
        <source>There is no setting “{key}”.</source>
        <translation>Il n'y a pas de réglage « {key} ».</translation>
    </message>
    <message>
        <source>There is no style “{key}”.{hint}</source>
        <translation>Il n'y a pas de style « {key} ».{hint}</translation>
    </message>
    <message>
        <source>There is no topic “{key}”; `explain` alone lists them.</source>
        <translation>Il n'y a pas de sujet « {key} » ; `explain` seul les énumère.</translation>
    </message>
    <message>
        <source>There is nothing to lock called “{said}”; write the id of a stage or dose, or for example warm.temperature_c.</source>
        <translation>Il n'y a rien à bloquer qui s'appelle « {said} » ; écrivez l'id d'une étape ou d'une dose, ou par exemple warm.temperature_c.</translation>
    </message>
    <message>
        <source>Think first</source>
        <translation>Réfléchir d'abord</translation>
    </message>
    <message>
        <source>This make has no {outcome}.</source>
        <translation>Cette fabrication n'a pas de {outcome}.</translation>
    </message>
    <message>
        <source>This make has no “{label}” to aim at.</source>
        <translation>Cette fabrication n'a pas de « {label} » à viser.</translation>
    </message>
    <message>
        <source>To read grams, give the pack: how many units it holds, and what it weighs.</source>
        <translation>Pour lire des grammes, donnez le sachet : combien d'unités il contient et ce qu'il pèse.</translation>
    </message>
    <message>
        <source>To standardise: {sentence}</source>
        <translation>Pour standardiser : {sentence}</translation>
    </message>
    <message>
        <source>Too few to say how far they spread: the ranges are only what counts as near.</source>
        <translation>Trop peu pour dire leur dispersion : les plages ne sont que ce qui compte comme proche.</translation>
    </message>
    <message>
        <source>Usage: </source>
        <translation>Usage : </translation>
    </message>
    <message>
        <source>Weigh out before the milk comes</source>
        <translation>À peser avant l'arrivée du lait</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>Ce qui en résulte</translation>
    </message>
    <message>
        <source>What each difference is worth</source>
        <translation>Ce que vaut chaque différence</translation>
    </message>
    <message>
        <source>What may move in this recipe does not reach so far.</source>
        <translation>Ce qui peut bouger dans cette recette ne va pas si loin.</translation>
    </message>
    <message>
        <source>What moves it: {label}</source>
        <translation>Ce qui le fait bouger : {label}</translation>
    </message>
    <message>
        <source>What scalded pieces let go of their water rests on remembered compositions; take moisture within about 3 points.</source>
        <translation>L'eau que perdent les pièces échaudées repose sur des compositions retenues de mémoire ; comptez l'humidité à 3 points près.</translation>
    </message>
    <message>
        <source>What stretching takes and gives of water and fat is known by its direction; its size is an engineering default.</source>
        <translation>On sait dans quel sens le filage prend et rend de l'eau et de la matière grasse ; l'ampleur est une valeur d'ingénieur.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Where does the acid come fastest, and what stops it in the end?</source>
        <translation>Où l'acide vient-il le plus vite, et qu'est-ce qui l'arrête à la fin ?</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Avec</translation>
    </message>
    <message>
        <source>With a sample of {new_sample_ml:g} mL instead of {sample_ml:g} mL the same {naoh_ml:g} mL mean {now:.3f} %, not {before:.3f} %: read the burette again, or put the sample back.</source>
        <translation>Avec un échantillon de {new_sample_ml:g} mL au lieu de {sample_ml:g} mL, les mêmes {naoh_ml:g} mL signifient {now:.3f} %, non {before:.3f} % : relisez la burette, ou remettez l'échantillon.</translation>
    </message>
    <message>
        <source>Without a style there is no middle to hold the moisture against, so soft and dry are judged by class alone.</source>
        <translation>Sans style il n'y a pas de milieu à quoi comparer l'humidité, mou et sec sont donc jugés par la seule classe.</translation>
    </message>
    <message>
        <source>Write down what you read at the end of each.</source>
        <translation>Notez ce que vous lisez à la fin de chacune.</translation>
    </message>
    <message>
        <source>Written to {path}</source>
        <translation>Écrit dans {path}</translation>
    </message>
    <message>
        <source>Yield kg/100 kg</source>
        <translation>Rendement kg/100 kg</translation>
    </message>
    <message>
        <source>[bold]Effects of one change[/bold]</source>
        <translation>[bold]Effets d'un changement[/bold]</translation>
    </message>
    <message>
        <source>[bold]Figures that the 80 % bands reach, out of the fit[/bold]</source>
        <translation>[bold]Chiffres que les bandes à 80 % atteignent, hors calage[/bold]</translation>
    </message>
    <message>
        <source>[bold]Mean absolute error; out of the fit with its 80 % interval[/bold]</source>
        <translation>[bold]Erreur absolue moyenne ; hors calage, avec son intervalle à 80 %[/bold]</translation>
    </message>
    <message>
        <source>[bold]{held} of {compared} published figures hold.[/bold]</source>
        <translation>[bold]{held} chiffres publiés sur {compared} sont tenus.[/bold]</translation>
    </message>
    <message>
        <source>[bold]{name}: {state}[/bold]. {sentence}</source>
        <translation>[bold]{name} : {state}[/bold]. {sentence}</translation>
    </message>
    <message>
        <source>[bold]{name}[/bold] against [bold]{name2}[/bold]</source>
        <translation>[bold]{name}[/bold] contre [bold]{name2}[/bold]</translation>
    </message>
    <message>
        <source>a branch needs at least one stage</source>
        <translation>une branche a besoin d'au moins une étape</translation>
    </message>
    <message>
        <source>a branch parts from the main make; choose a stage of it</source>
        <translation>une branche part de la fabrication principale ; choisissez-en une étape</translation>
    </message>
    <message>
        <source>a coagulant needs its strength in IMCU/mL (on the bottle), for example strength = "200 IMCU/mL"</source>
        <translation>un coagulant a besoin de sa force en IMCU/mL (sur le flacon), par exemple strength = "200 IMCU/mL"</translation>
    </message>
    <message>
        <source>a first recipe needs a milk</source>
        <translation>une première recette a besoin d'un lait</translation>
    </message>
    <message>
        <source>a form of your own choice</source>
        <translation>un moule de votre choix</translation>
    </message>
    <message>
        <source>a press needs at least one step</source>
        <translation>une presse a besoin d'au moins un palier</translation>
    </message>
    <message>
        <source>a press step has either a load or a pressure</source>
        <translation>un palier de presse a soit une charge, soit une pression</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>une pression</translation>
    </message>
    <message>
        <source>a pressure; the weight goes by the area</source>
        <translation>une pression ; le poids suit la surface</translation>
    </message>
    <message>
        <source>a pyramid needs the width of its foot</source>
        <translation>une pyramide a besoin de la largeur de son pied</translation>
    </message>
    <message>
        <source>a ramp needs the temperature it leads to</source>
        <translation>une rampe a besoin de la température où elle mène</translation>
    </message>
    <message>
        <source>a round form needs its diameter</source>
        <translation>un moule rond a besoin de son diamètre</translation>
    </message>
    <message>
        <source>a share of the milk</source>
        <translation>une part du lait</translation>
    </message>
    <message>
        <source>a share of the milk lies between 0 and 100 %, not at {share_pct:g} %</source>
        <translation>une part du lait est entre 0 et 100 %, non à {share_pct:g} %</translation>
    </message>
    <message>
        <source>a stage has a length or an end by a state, not both</source>
        <translation>une étape a une durée ou une fin sur un état, pas les deux</translation>
    </message>
    <message>
        <source>a stage of {planned_min} can't be cut there</source>
        <translation>une étape de {planned_min} ne peut être coupée là</translation>
    </message>
    <message>
        <source>a starter</source>
        <translation>un ferment</translation>
    </message>
    <message>
        <source>a starter by mass needs the potency of its pack, for example potency = "1e11 CFU/g"</source>
        <translation>un ferment en masse a besoin de la concentration de son sachet, par exemple potency = "1e11 CFU/g"</translation>
    </message>
    <message>
        <source>a state, whenever it is reached</source>
        <translation>un état, quand il est atteint</translation>
    </message>
    <message>
        <source>a vat holds between 50 mL and 100 000 L, not {to_l}</source>
        <translation>une cuve contient entre 50 mL et 100 000 L, non {to_l}</translation>
    </message>
    <message>
        <source>a {rind} rind</source>
        <translation>croûte {rind}</translation>
    </message>
    <message>
        <source>a {shape} needs its length and width</source>
        <translation>la forme « {shape} » a besoin de sa longueur et de sa largeur</translation>
    </message>
    <message>
        <source>about {celsius}</source>
        <translation>environ {celsius}</translation>
    </message>
    <message>
        <source>above</source>
        <translation>au-dessus de</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>acide</translation>
    </message>
    <message>
        <source>acid in time: pH {most:g} at 6 h ({name})</source>
        <translation>acidité à temps : pH {most:g} à 6 h ({name})</translation>
    </message>
    <message>
        <source>acid in time: pH {most:g} at milling ({name})</source>
        <translation>acidité à temps : pH {most:g} au broyage ({name})</translation>
    </message>
    <message>
        <source>add</source>
        <translation>ajoutez</translation>
    </message>
    <message>
        <source>after</source>
        <translation>après</translation>
    </message>
    <message>
        <source>after {called}</source>
        <translation>après {called}</translation>
    </message>
    <message>
        <source>again</source>
        <translation>à refaire</translation>
    </message>
    <message>
        <source>age_if “{age_if}” is none of: {age_if2}</source>
        <translation>age_if « {age_if} » n'est pas parmi : {age_if2}</translation>
    </message>
    <message>
        <source>aim</source>
        <translation>visé</translation>
    </message>
    <message>
        <source>airspace {degree}</source>
        <translation>air {degree}</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>identique</translation>
    </message>
    <message>
        <source>all sanitised</source>
        <translation>tout désinfecté</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>admis</translation>
    </message>
    <message>
        <source>an end by feel needs its planned length</source>
        <translation>une fin au jugé a besoin de sa durée prévue</translation>
    </message>
    <message>
        <source>an end by {by} has a latest moment, not a length</source>
        <translation>fin par « {by} » : elle a une limite de temps, non une durée</translation>
    </message>
    <message>
        <source>an end by {by} has a length and nothing else</source>
        <translation>fin par « {by} » : elle a une durée et rien d'autre</translation>
    </message>
    <message>
        <source>an end by {by} has no value</source>
        <translation>fin par « {by} » : elle n'a pas de valeur</translation>
    </message>
    <message>
        <source>an end by {by} is not read on milk, whey, curd or cheese; leave “of” out</source>
        <translation>fin par « {by} » : elle ne se lit pas sur lait, lactosérum, caillé ou fromage ; laissez « of » de côté</translation>
    </message>
    <message>
        <source>an end by {by} lies between {low:g} and {high:g}, not at {value:g}</source>
        <translation>fin par « {by} » : elle est entre {low:g} et {high:g}, non à {value:g}</translation>
    </message>
    <message>
        <source>an end by {by} must say of what: milk, whey, curd or cheese</source>
        <translation>fin par « {by} » : elle doit dire sur quoi : milk, whey, curd ou cheese</translation>
    </message>
    <message>
        <source>an end by {by} needs its latest moment, for example latest = "2 h"</source>
        <translation>fin par « {by} » : il lui faut sa limite de temps, par exemple latest = "2 h"</translation>
    </message>
    <message>
        <source>an end by {by} needs its value</source>
        <translation>fin par « {by} » : il lui faut sa valeur</translation>
    </message>
    <message>
        <source>an id is empty</source>
        <translation>un id est vide</translation>
    </message>
    <message>
        <source>another animal's milk</source>
        <translation>le lait d'un autre animal</translation>
    </message>
    <message>
        <source>another milk</source>
        <translation>un autre lait</translation>
    </message>
    <message>
        <source>as fitted</source>
        <translation>calé</translation>
    </message>
    <message>
        <source>as it comes</source>
        <translation>comme elle vient</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>tel quel</translation>
    </message>
    <message>
        <source>as many as before</source>
        <translation>autant qu'avant</translation>
    </message>
    <message>
        <source>as many cheeses as before, of the same proportions</source>
        <translation>autant de fromages qu'avant, aux mêmes proportions</translation>
    </message>
    <message>
        <source>as much curd in each; {more}, made whole</source>
        <translation>autant de caillé dans chacun ; {more}, arrondi</translation>
    </message>
    <message>
        <source>as {bulk:.2g} % of bulk starter</source>
        <translation>comme {bulk:.2g} % de levain</translation>
    </message>
    <message>
        <source>at its end</source>
        <translation>au bout</translation>
    </message>
    <message>
        <source>at the latest after {planned_min}</source>
        <translation>au plus tard après {planned_min}</translation>
    </message>
    <message>
        <source>at {potency_cfu_g}</source>
        <translation>à {potency_cfu_g}</translation>
    </message>
    <message>
        <source>at {pressure_kpa}</source>
        <translation>à {pressure_kpa}</translation>
    </message>
    <message>
        <source>at {title}</source>
        <translation>à {title}</translation>
    </message>
    <message>
        <source>at {water_c}</source>
        <translation>à {water_c}</translation>
    </message>
    <message>
        <source>balance of the forecast</source>
        <translation>bilan de la prévision</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>before</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>below</source>
        <translation>au-dessous de</translation>
    </message>
    <message>
        <source>body and taste</source>
        <translation>corps et goût</translation>
    </message>
    <message>
        <source>branch “{name}”</source>
        <translation>branche « {name} »</translation>
    </message>
    <message>
        <source>branch “{name}”, </source>
        <translation>branche « {name} », </translation>
    </message>
    <message>
        <source>branch “{name}”: </source>
        <translation>branche « {name} » : </translation>
    </message>
    <message>
        <source>branches take {share:g} % of the {of} after “{after}”, more than there is</source>
        <translation>des branches prennent {share:g} % ({of}) après « {after} », plus qu'il n'y a</translation>
    </message>
    <message>
        <source>brine {strength_pct:g} % w/w, {brine_c}</source>
        <translation>saumure {strength_pct:g} % p/p, {brine_c}</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>by feel</source>
        <translation>au jugé</translation>
    </message>
    <message>
        <source>calcium chloride</source>
        <translation>chlorure de calcium</translation>
    </message>
    <message>
        <source>calcium chloride by volume needs its solution, for example solution = "33 %"</source>
        <translation>du chlorure de calcium en volume a besoin de sa solution, par exemple solution = "33 %"</translation>
    </message>
    <message>
        <source>calf rennet</source>
        <translation>présure de veau</translation>
    </message>
    <message>
        <source>camel chymosin</source>
        <translation>chymosine de chameau</translation>
    </message>
    <message>
        <source>casein ({casein:g} %) is a part of the protein ({protein:g} %) and can't be as much</source>
        <translation>la caséine ({casein:g} %) est une part des protéines ({protein:g} %) et ne peut en être autant</translation>
    </message>
    <message>
        <source>casein is a part of the protein and can't be as much</source>
        <translation>la caséine est une part des protéines et ne peut en être autant</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>cherry</source>
        <translation>cerise</translation>
    </message>
    <message>
        <source>chymosin</source>
        <translation>chymosine</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>coagulant</source>
        <translation>coagulant</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>colorant</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>crème</translation>
    </message>
    <message>
        <source>cream is taken from the milk, before it is cut</source>
        <translation>la crème se prend au lait, avant le décaillage</translation>
    </message>
    <message>
        <source>cut at {value:g} × floc</source>
        <translation>décailler à {value:g} × floc</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>day {day}</source>
        <translation>jour {day}</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>did you mean “{close}”?</source>
        <translation>vouliez-vous dire « {close} » ?</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>différence</translation>
    </message>
    <message>
        <source>dose</source>
        <translation>dose</translation>
    </message>
    <message>
        <source>drawing the whey and adding the water take longer than the whole stage</source>
        <translation>tirer le lactosérum et ajouter l'eau prennent plus que toute l'étape</translation>
    </message>
    <message>
        <source>drier</source>
        <translation>plus sec</translation>
    </message>
    <message>
        <source>else the cheese would be {which}, {here:.1f} % moisture in non-fat substance instead of {target:.1f}</source>
        <translation>sinon le fromage serait {which}, {here:.1f} % d'humidité dégraissée au lieu de {target:.1f}</translation>
    </message>
    <message>
        <source>end does not say by what; for example by = "ph"</source>
        <translation>end ne dit pas par quoi ; par exemple by = "ph"</translation>
    </message>
    <message>
        <source>end is a table, for example end = { by = "ph", of = "curd", value = "6.10", latest = "2 h" }</source>
        <translation>end est une table, par exemple end = { by = "ph", of = "curd", value = "6.10", latest = "2 h" }</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fini à</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>ends at</source>
        <translation>finit à</translation>
    </message>
    <message>
        <source>ends at {what}</source>
        <translation>finit par {what}</translation>
    </message>
    <message>
        <source>ends at, guess</source>
        <translation>finit à, deviné</translation>
    </message>
    <message>
        <source>error</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>even odds</source>
        <translation>une chance sur deux</translation>
    </message>
    <message>
        <source>families</source>
        <translation>familles</translation>
    </message>
    <message>
        <source>fewer than 1 in 10</source>
        <translation>moins de 1 sur 10</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>chiffres</translation>
    </message>
    <message>
        <source>firm, {value:g} Pa</source>
        <translation>ferme, {value:g} Pa</translation>
    </message>
    <message>
        <source>floc seen at</source>
        <translation>floc vue à</translation>
    </message>
    <message>
        <source>floc {at} ({floc_range} min)</source>
        <translation>floc {at} ({floc_range} min)</translation>
    </message>
    <message>
        <source>for {planned_min}</source>
        <translation>pendant {planned_min}</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>prévision</translation>
    </message>
    <message>
        <source>forecast for {number} of {count} liked batches, not measured</source>
        <translation>prévu pour {number} des {count} fabrications appréciées, non mesuré</translation>
    </message>
    <message>
        <source>forecast of {name}</source>
        <translation>prévision de {name}</translation>
    </message>
    <message>
        <source>form</source>
        <translation>moule</translation>
    </message>
    <message>
        <source>form of {name}</source>
        <translation>moule de {name}</translation>
    </message>
    <message>
        <source>format = {version!r} is no format; a recipe begins with format = {present}</source>
        <translation>format = {version!r} n'est pas un format ; une recette commence par format = {present}</translation>
    </message>
    <message>
        <source>forms</source>
        <translation>moules</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>from {low}</source>
        <translation>à partir de {low}</translation>
    </message>
    <message>
        <source>from {said}</source>
        <translation>à partir de {said}</translation>
    </message>
    <message>
        <source>gates after {source}</source>
        <translation>jalons d'après {source}</translation>
    </message>
    <message>
        <source>give salt by mass or as a share of the milk, not by volume</source>
        <translation>donnez le sel en masse ou en part du lait, non en volume</translation>
    </message>
    <message>
        <source>goes in</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>goes in after</source>
        <translation>entre après</translation>
    </message>
    <message>
        <source>goes in after the stage has ended</source>
        <translation>entre après la fin de l'étape</translation>
    </message>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>have “{have}” is none of: {haves}</source>
        <translation>have « {have} » n'est pas parmi : {haves}</translation>
    </message>
    <message>
        <source>hazelnut</source>
        <translation>noisette</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>chauffé</translation>
    </message>
    <message>
        <source>heated high</source>
        <translation>chauffé haut</translation>
    </message>
    <message>
        <source>heating</source>
        <translation>chauffage</translation>
    </message>
    <message>
        <source>held from</source>
        <translation>tenu depuis</translation>
    </message>
    <message>
        <source>hemp seed</source>
        <translation>graine de chanvre</translation>
    </message>
    <message>
        <source>higher</source>
        <translation>plus haut</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>bloquer</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>tient</translation>
    </message>
    <message>
        <source>in IMCU per litre of milk</source>
        <translation>en IMCU par litre de lait</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en tout</translation>
    </message>
    <message>
        <source>in grams, dry, per kg of milk</source>
        <translation>en grammes, sec, par kg de lait</translation>
    </message>
    <message>
        <source>in the recipes of {number} of {count} liked batches</source>
        <translation>dans les recettes de {number} des {count} fabrications appréciées</translation>
    </message>
    <message>
        <source>in {water} of cool water</source>
        <translation>dans {water} d'eau fraîche</translation>
    </message>
    <message>
        <source>inside its limits</source>
        <translation>dans ses limites</translation>
    </message>
    <message>
        <source>inside the usual {usual}</source>
        <translation>dans l'usage, {usual}</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>intervalle</translation>
    </message>
    <message>
        <source>it is not TOML</source>
        <translation>ce n'est pas du TOML</translation>
    </message>
    <message>
        <source>it is one by all that is known of it here</source>
        <translation>c'en est un, d'après tout ce qu'on en sait ici</translation>
    </message>
    <message>
        <source>its class</source>
        <translation>sa classe</translation>
    </message>
    <message>
        <source>kind = “{kind}” is unknown; {kind2}</source>
        <translation>kind = « {kind} » est inconnu ; {kind2}</translation>
    </message>
    <message>
        <source>kind is missing; for example kind = "cook"</source>
        <translation>kind manque ; par exemple kind = "cook"</translation>
    </message>
    <message>
        <source>kind “{kind}” is none of: {kinds}</source>
        <translation>kind « {kind} » n'est pas parmi : {kinds}</translation>
    </message>
    <message>
        <source>kind, strength and age belong to a coagulant, not to {what}</source>
        <translation>genre, force et âge appartiennent à un coagulant, non à : {what}</translation>
    </message>
    <message>
        <source>known are {known}</source>
        <translation>on connaît {known}</translation>
    </message>
    <message>
        <source>later</source>
        <translation>plus tard</translation>
    </message>
    <message>
        <source>less</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>less acid</source>
        <translation>moins acide</translation>
    </message>
    <message>
        <source>less calcium per g protein</source>
        <translation>de calcium en moins par g de protéine</translation>
    </message>
    <message>
        <source>less cheese per 100 kg milk</source>
        <translation>de fromage en moins pour 100 kg de lait</translation>
    </message>
    <message>
        <source>less fat in dry matter</source>
        <translation>moins de gras sur sec</translation>
    </message>
    <message>
        <source>less salty</source>
        <translation>moins salé</translation>
    </message>
    <message>
        <source>less so above {limit}</source>
        <translation>moins au-dessus de {limit}</translation>
    </message>
    <message>
        <source>less so below {limit}</source>
        <translation>moins au-dessous de {limit}</translation>
    </message>
    <message>
        <source>likely inside: {in_ten}</source>
        <translation>plutôt dedans : {in_ten}</translation>
    </message>
    <message>
        <source>likely outside: {in_ten}</source>
        <translation>plutôt dehors : {in_ten}</translation>
    </message>
    <message>
        <source>lipase</source>
        <translation>lipase</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>charges</translation>
    </message>
    <message>
        <source>lot {lot}</source>
        <translation>lot {lot}</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>plus bas</translation>
    </message>
    <message>
        <source>made from {milks} milk; this recipe has {strangers}</source>
        <translation>fait de lait de {milks} ; cette recette a du lait de {strangers}</translation>
    </message>
    <message>
        <source>make room</source>
        <translation>local de fabrication</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>makes no difference here</source>
        <translation>ne fait pas de différence ici</translation>
    </message>
    <message>
        <source>mean of what was liked</source>
        <translation>moyenne de ce qui a plu</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>measured in {number} of {count} liked batches</source>
        <translation>mesuré dans {number} des {count} fabrications appréciées</translation>
    </message>
    <message>
        <source>microbial coagulant</source>
        <translation>coagulant microbien</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>lait</translation>
    </message>
    <message>
        <source>milk free of medicine</source>
        <translation>lait sans médicament</translation>
    </message>
    <message>
        <source>milk has between 6 and 30 % solids; this one would have {solids:.1f} %</source>
        <translation>un lait a entre 6 et 30 % d'extrait sec ; celui-ci en aurait {solids:.1f} %</translation>
    </message>
    <message>
        <source>milk pH</source>
        <translation>pH du lait</translation>
    </message>
    <message>
        <source>milk withheld because of medicine can't be used; take it out of the recipe</source>
        <translation>un lait écarté à cause d'un médicament ne peut servir ; retirez-le de la recette</translation>
    </message>
    <message>
        <source>milk {degree}</source>
        <translation>lait {degree}</translation>
    </message>
    <message>
        <source>milk {index}, “{name}”</source>
        <translation>lait {index}, « {name} »</translation>
    </message>
    <message>
        <source>milk, doses and the rest {signed}</source>
        <translation>lait, doses et le reste {signed}</translation>
    </message>
    <message>
        <source>model {model}</source>
        <translation>modèle {model}</translation>
    </message>
    <message>
        <source>model {version}</source>
        <translation>modèle {version}</translation>
    </message>
    <message>
        <source>model: {note}</source>
        <translation>modèle : {note}</translation>
    </message>
    <message>
        <source>moister</source>
        <translation>plus humide</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>more</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>more acid</source>
        <translation>plus acide</translation>
    </message>
    <message>
        <source>more calcium per g protein</source>
        <translation>de calcium en plus par g de protéine</translation>
    </message>
    <message>
        <source>more cheese per 100 kg milk</source>
        <translation>de fromage en plus pour 100 kg de lait</translation>
    </message>
    <message>
        <source>more fat in dry matter</source>
        <translation>plus de gras sur sec</translation>
    </message>
    <message>
        <source>more milk takes longer by hand</source>
        <translation>plus de lait prend plus de temps à la main</translation>
    </message>
    <message>
        <source>more so above {limit}</source>
        <translation>davantage au-dessus de {limit}</translation>
    </message>
    <message>
        <source>more so below {limit}</source>
        <translation>davantage au-dessous de {limit}</translation>
    </message>
    <message>
        <source>more than 9 in 10</source>
        <translation>plus de 9 sur 10</translation>
    </message>
    <message>
        <source>multiple of flocculation</source>
        <translation>multiple de floculation</translation>
    </message>
    <message>
        <source>my guess</source>
        <translation>je devine</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>names differ from place to place: go by the millimetres</source>
        <translation>les noms varient d'un lieu à l'autre : fiez-vous aux millimètres</translation>
    </message>
    <message>
        <source>nearer, but not inside its limits</source>
        <translation>plus près, mais pas dans ses limites</translation>
    </message>
    <message>
        <source>neither of the two is the open recipe; put one beside it to take a value across</source>
        <translation>aucune des deux n'est la recette ouverte ; mettez-en une à côté d'elle pour reprendre une valeur</translation>
    </message>
    <message>
        <source>never fitted</source>
        <translation>jamais calé</translation>
    </message>
    <message>
        <source>new stage, “{label}”</source>
        <translation>nouvelle étape, « {label} »</translation>
    </message>
    <message>
        <source>next day</source>
        <translation>jour 2</translation>
    </message>
    <message>
        <source>next time: {remedy}</source>
        <translation>la prochaine fois : {remedy}</translation>
    </message>
    <message>
        <source>night</source>
        <translation>nuit</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>no cheese goes into the room yet; put a stage of the make before it</source>
        <translation>aucun fromage n'entre encore en cave ; mettez une étape de fabrication avant</translation>
    </message>
    <message>
        <source>no coagulant goes in here; add one with at = "{id}"</source>
        <translation>aucun coagulant n'entre ici ; ajoutez-en un avec at = "{id}"</translation>
    </message>
    <message>
        <source>no coat fits as it stands; the least unfit is {coat}</source>
        <translation>aucun enrobage ne convient en l'état ; le moins inadapté est {coat}</translation>
    </message>
    <message>
        <source>no more than {steps_at_most} steps at once</source>
        <translation>pas plus de {steps_at_most} pas à la fois</translation>
    </message>
    <message>
        <source>no such cheese below {bands:g} % fat in dry matter</source>
        <translation>pas de tel fromage au-dessous de {bands:g} % de gras sur sec</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>none is given</source>
        <translation>aucun n'est donné</translation>
    </message>
    <message>
        <source>none said</source>
        <translation>rien de dit</translation>
    </message>
    <message>
        <source>not after {time}</source>
        <translation>pas après {time}</translation>
    </message>
    <message>
        <source>not again</source>
        <translation>à ne pas refaire</translation>
    </message>
    <message>
        <source>not for sale before</source>
        <translation>pas de vente avant</translation>
    </message>
    <message>
        <source>not for sale before (day {days:g})</source>
        <translation>pas de vente avant (jour {days:g})</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>pas atteint</translation>
    </message>
    <message>
        <source>not tasted yet</source>
        <translation>pas encore dégusté</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>nothing can be moved there</source>
        <translation>rien n'y peut bouger</translation>
    </message>
    <message>
        <source>nothing changed</source>
        <translation>rien de changé</translation>
    </message>
    <message>
        <source>nothing to warm</source>
        <translation>rien à chauffer</translation>
    </message>
    <message>
        <source>of {species} milk</source>
        <translation>au lait de {species}</translation>
    </message>
    <message>
        <source>one of the two can't be read as a recipe</source>
        <translation>l'une des deux ne peut être lue comme recette</translation>
    </message>
    <message>
        <source>other: {round} ÷ IMCU/{unit}</source>
        <translation>autre : {round} ÷ IMCU/{unit}</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>le nôtre</translation>
    </message>
    <message>
        <source>out of the fit</source>
        <translation>hors calage</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>pH at 24 h</source>
        <translation>pH à 24 h</translation>
    </message>
    <message>
        <source>pH at draining</source>
        <translation>pH au soutirage</translation>
    </message>
    <message>
        <source>pH meter calibrated</source>
        <translation>pH-mètre étalonné</translation>
    </message>
    <message>
        <source>pH of the whey</source>
        <translation>pH du lactosérum</translation>
    </message>
    <message>
        <source>pH {moment}</source>
        <translation>pH {moment}</translation>
    </message>
    <message>
        <source>pH {size} higher</source>
        <translation>pH {size} plus haut</translation>
    </message>
    <message>
        <source>pH {size} lower</source>
        <translation>pH {size} plus bas</translation>
    </message>
    <message>
        <source>pH {value:.2f}</source>
        <translation>pH {value:.2f}</translation>
    </message>
    <message>
        <source>pH {value:.2f} ({next_day_range})</source>
        <translation>pH {value:.2f} ({next_day_range})</translation>
    </message>
    <message>
        <source>pH {value:.2f}, {of}</source>
        <translation>pH {value:.2f}, {of}</translation>
    </message>
    <message>
        <source>pH, guess</source>
        <translation>pH, deviné</translation>
    </message>
    <message>
        <source>pH, read</source>
        <translation>pH, lu</translation>
    </message>
    <message>
        <source>pasteurised</source>
        <translation>pasteurisé</translation>
    </message>
    <message>
        <source>pea</source>
        <translation>pois</translation>
    </message>
    <message>
        <source>plan {plan_version}</source>
        <translation>fiche {plan_version}</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>plant coagulant</source>
        <translation>coagulant végétal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>rather {word}</source>
        <translation>plutôt {word}</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>cru</translation>
    </message>
    <message>
        <source>recipe</source>
        <translation>recette</translation>
    </message>
    <message>
        <source>release</source>
        <translation>libérer</translation>
    </message>
    <message>
        <source>remove</source>
        <translation>retirez</translation>
    </message>
    <message>
        <source>rennet</source>
        <translation>présure</translation>
    </message>
    <message>
        <source>rice</source>
        <translation>riz</translation>
    </message>
    <message>
        <source>ripening culture</source>
        <translation>culture d'affinage</translation>
    </message>
    <message>
        <source>room {degree} / % RH</source>
        <translation>local {degree} / % HR</translation>
    </message>
    <message>
        <source>room “{name}”</source>
        <translation>cave « {name} »</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>règle</translation>
    </message>
    <message>
        <source>rules “{set}”</source>
        <translation>règles « {set} »</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>sel</translation>
    </message>
    <message>
        <source>salt in moisture of at least {least:.1f} %</source>
        <translation>sel sur humidité d'au moins {least:.1f} %</translation>
    </message>
    <message>
        <source>salt strewn on the faces goes in by thickness squared: {said} for the same share</source>
        <translation>le sel semé sur les faces entre selon le carré de l'épaisseur : {said} pour la même part</translation>
    </message>
    <message>
        <source>saltier</source>
        <translation>plus salé</translation>
    </message>
    <message>
        <source>saturated</source>
        <translation>saturée</translation>
    </message>
    <message>
        <source>saturated, {saturated_pct} % w/w</source>
        <translation>saturée, {saturated_pct} % p/p</translation>
    </message>
    <message>
        <source>say how long the change of temperature takes (ramp = "30 min"), or give the vat its power or cooling</source>
        <translation>dites combien dure le changement de température (ramp = "30 min"), ou donnez à la cuve sa puissance ou son refroidissement</translation>
    </message>
    <message>
        <source>say once how much water goes on: as share of the milk (water) or as water_volume</source>
        <translation>dites une seule fois combien d'eau entre : en part du lait (water) ou en volume (water_volume)</translation>
    </message>
    <message>
        <source>say which acid: lactic, citric or acetic</source>
        <translation>dites quel acide : lactic, citric ou acetic</translation>
    </message>
    <message>
        <source>size</source>
        <translation>taille</translation>
    </message>
    <message>
        <source>skim</source>
        <translation>lait écrémé</translation>
    </message>
    <message>
        <source>skim milk</source>
        <translation>lait écrémé</translation>
    </message>
    <message>
        <source>so much cream can't be taken off: it holds {fat:g} % fat</source>
        <translation>on ne peut tirer tant de crème : il contient {fat:g} % de matière grasse</translation>
    </message>
    <message>
        <source>solution of {strength_pct:g} %</source>
        <translation>solution à {strength_pct:g} %</translation>
    </message>
    <message>
        <source>sooner</source>
        <translation>plus tôt</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>stage {index}, “{title}”</source>
        <translation>étape {index}, « {title} »</translation>
    </message>
    <message>
        <source>starter</source>
        <translation>ferment</translation>
    </message>
    <message>
        <source>starter, {kind}</source>
        <translation>ferment, {kind}</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>reste</translation>
    </message>
    <message>
        <source>step {index}: </source>
        <translation>palier {index} : </translation>
    </message>
    <message>
        <source>sum of parts</source>
        <translation>somme des parts</translation>
    </message>
    <message>
        <source>target (± {margin} {degree})</source>
        <translation>cible (± {margin} {degree})</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>texture rule {number}, “{word}”</source>
        <translation>règle de texture {number}, « {word} »</translation>
    </message>
    <message>
        <source>the FDM bands must rise</source>
        <translation>les bandes de G/S doivent monter</translation>
    </message>
    <message>
        <source>the arm alone presses with {arm_kg:g}, more than the {force:g} wanted</source>
        <translation>le bras seul presse avec {arm_kg:g}, plus que les {force:g} voulus</translation>
    </message>
    <message>
        <source>the branch “{label}” parts after the stage “{after}”, which there is not</source>
        <translation>la branche « {label} » part après l'étape « {after} », qui n'existe pas</translation>
    </message>
    <message>
        <source>the change of temperature takes longer than the stage</source>
        <translation>le changement de température dure plus que l'étape</translation>
    </message>
    <message>
        <source>the cheeses can't take more salt than the brine holds</source>
        <translation>les fromages ne peuvent prendre plus de sel que la saumure n'en contient</translation>
    </message>
    <message>
        <source>the cube root of the curd in each: same proportions</source>
        <translation>la racine cubique du caillé dans chacun : mêmes proportions</translation>
    </message>
    <message>
        <source>the curd there is, over the face of the forms</source>
        <translation>le caillé qu'il y a, sur la face des moules</translation>
    </message>
    <message>
        <source>the earliest moment must lie before the latest</source>
        <translation>le moment le plus tôt doit précéder le plus tard</translation>
    </message>
    <message>
        <source>the file</source>
        <translation>le fichier</translation>
    </message>
    <message>
        <source>the file can't be read as TOML: it is nested too deeply</source>
        <translation>le fichier ne peut être lu comme TOML : il est imbriqué trop profond</translation>
    </message>
    <message>
        <source>the file can't be read as TOML: {said}{said2}</source>
        <translation>le fichier ne peut être lu comme TOML : {said}{said2}</translation>
    </message>
    <message>
        <source>the file can't be read: {strerror}</source>
        <translation>le fichier ne peut être lu : {strerror}</translation>
    </message>
    <message>
        <source>the file can't be written: {strerror}</source>
        <translation>le fichier ne peut être écrit : {strerror}</translation>
    </message>
    <message>
        <source>the file does not say its format; a recipe begins with format = {present}</source>
        <translation>le fichier ne dit pas son format ; une recette commence par format = {present}</translation>
    </message>
    <message>
        <source>the file has format {version}, newer than this program; it is not written over</source>
        <translation>le fichier a le format {version}, plus récent que ce programme ; il n'est pas écrasé</translation>
    </message>
    <message>
        <source>the file has format {version}, this program knows formats up to {present}; open it with a newer version of the program</source>
        <translation>le fichier a le format {version}, ce programme connaît jusqu'au {present} ; ouvrez-le avec une version plus récente du programme</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
    <message>
        <source>the file is protected against writing; save under another name</source>
        <translation>le fichier est protégé en écriture ; enregistrez sous un autre nom</translation>
    </message>
    <message>
        <source>the head of this version can't be read; it should say saved, by, note and changed</source>
        <translation>l'en-tête de cette version ne peut être lu ; il devrait dire saved, by, note et changed</translation>
    </message>
    <message>
        <source>the id “{each}” stands twice; every id is used once in a recipe</source>
        <translation>l'id « {each} » figure deux fois ; chaque id sert une fois dans une recette</translation>
    </message>
    <message>
        <source>the legal ceiling of calcium chloride, 0.02 % of the milk</source>
        <translation>le plafond légal du chlorure de calcium, 0,02 % du lait</translation>
    </message>
    <message>
        <source>the length is missing</source>
        <translation>la durée manque</translation>
    </message>
    <message>
        <source>the length is not known beforehand, so say how long the change of temperature takes: ramp = "30 min"</source>
        <translation>la durée n'est pas connue d'avance, dites donc combien dure le changement de température : ramp = "30 min"</translation>
    </message>
    <message>
        <source>the main make</source>
        <translation>la fabrication principale</translation>
    </message>
    <message>
        <source>the make takes {later} longer</source>
        <translation>la fabrication dure {later} de plus</translation>
    </message>
    <message>
        <source>the middle of {style}</source>
        <translation>le milieu de {style}</translation>
    </message>
    <message>
        <source>the milk must be {asked}; it is {here}</source>
        <translation>le lait doit être {asked} ; il est {here}</translation>
    </message>
    <message>
        <source>the note can't be written: {why}</source>
        <translation>la note ne peut être écrite : {why}</translation>
    </message>
    <message>
        <source>the number of cheeses lies between 1 and 10000, not at {count}</source>
        <translation>le nombre de fromages est entre 1 et 10000, non à {count}</translation>
    </message>
    <message>
        <source>the only stage can't be taken out</source>
        <translation>la seule étape ne peut être retirée</translation>
    </message>
    <message>
        <source>the press can't end before its last step begins; shorten the steps</source>
        <translation>la presse ne peut finir avant que son dernier palier commence ; raccourcissez les paliers</translation>
    </message>
    <message>
        <source>the recipe has no milk; add a [[milk]]</source>
        <translation>la recette n'a pas de lait ; ajoutez un [[milk]]</translation>
    </message>
    <message>
        <source>the recipe has no stage; add a [[stage]]</source>
        <translation>la recette n'a pas d'étape ; ajoutez un [[stage]]</translation>
    </message>
    <message>
        <source>the recipe needs a name</source>
        <translation>la recette a besoin d'un nom</translation>
    </message>
    <message>
        <source>the same activity in each litre</source>
        <translation>la même activité dans chaque litre</translation>
    </message>
    <message>
        <source>the same activity in each litre; the amount goes by the milk of itself</source>
        <translation>la même activité dans chaque litre ; la quantité suit d'elle-même le lait</translation>
    </message>
    <message>
        <source>the same cheese</source>
        <translation>le même fromage</translation>
    </message>
    <message>
        <source>the same form</source>
        <translation>le même moule</translation>
    </message>
    <message>
        <source>the same press</source>
        <translation>la même presse</translation>
    </message>
    <message>
        <source>the same share of the milk</source>
        <translation>la même part du lait</translation>
    </message>
    <message>
        <source>the same strength in each litre</source>
        <translation>la même force dans chaque litre</translation>
    </message>
    <message>
        <source>the same {kpa} on the face; a stack feels it in each cheese</source>
        <translation>les mêmes {kpa} sur la face ; une pile les sent dans chaque fromage</translation>
    </message>
    <message>
        <source>the source “{key}” does not stand in {sources}{hint}</source>
        <translation>la source « {key} » n'est pas dans {sources}{hint}</translation>
    </message>
    <message>
        <source>the steps last {total} together, the stage {planned_min}</source>
        <translation>les paliers durent {total} ensemble, l'étape {planned_min}</translation>
    </message>
    <message>
        <source>the style's window</source>
        <translation>la plage du style</translation>
    </message>
    <message>
        <source>the temperature it starts from follows the room, so its change can't be cut in two</source>
        <translation>la température de départ suit le local, son changement ne peut donc être coupé en deux</translation>
    </message>
    <message>
        <source>the usual range of {name}, {low} to {high}</source>
        <translation>la plage usuelle de {name}, {low} à {high}</translation>
    </message>
    <message>
        <source>the vat you named</source>
        <translation>la cuve que vous avez nommée</translation>
    </message>
    <message>
        <source>the vat's {what} brings so much milk to {limit} at the most, never to {end_c}</source>
        <translation>{what} de la cuve amène tant de lait à {limit} au plus, jamais à {end_c}</translation>
    </message>
    <message>
        <source>there is no branch of curd of that name</source>
        <translation>il n'y a pas de branche de caillé de ce nom</translation>
    </message>
    <message>
        <source>there is no branch “{branch_id}”</source>
        <translation>il n'y a pas de branche « {branch_id} »</translation>
    </message>
    <message>
        <source>there is no cream in this milk</source>
        <translation>il n'y a pas de crème dans ce lait</translation>
    </message>
    <message>
        <source>there is no field “{name}” here; known are {names}</source>
        <translation>il n'y a pas de champ « {name} » ici ; on connaît {names}</translation>
    </message>
    <message>
        <source>there is no milk “{milk_id}”</source>
        <translation>il n'y a pas de lait « {milk_id} »</translation>
    </message>
    <message>
        <source>there is no part “{part_id}”</source>
        <translation>il n'y a pas d'élément « {part_id} »</translation>
    </message>
    <message>
        <source>there is no preset for the breed “{breed}”; of {species} there are: {known}</source>
        <translation>il n'y a pas de lait type pour la race « {breed} » ; de {species} il y a : {known}</translation>
    </message>
    <message>
        <source>there is no stage kind “{kind}”</source>
        <translation>il n'y a pas de genre d'étape « {kind} »</translation>
    </message>
    <message>
        <source>there is no stage “{stage_id}”</source>
        <translation>il n'y a pas d'étape « {stage_id} »</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ce fichier n'existe pas</translation>
    </message>
    <message>
        <source>there is no version {number}; there are {found}</source>
        <translation>il n'y a pas de version {number} ; il y en a {found}</translation>
    </message>
    <message>
        <source>there is no whey there yet</source>
        <translation>il n'y a pas encore de lactosérum</translation>
    </message>
    <message>
        <source>there is no {field} “{part_id}”</source>
        <translation>il n'y a pas « {part_id} » ({field})</translation>
    </message>
    <message>
        <source>thermised</source>
        <translation>thermisé</translation>
    </message>
    <message>
        <source>thermometer checked</source>
        <translation>thermomètre vérifié</translation>
    </message>
    <message>
        <source>this is a folder, not a recipe file</source>
        <translation>c'est un dossier, non un fichier de recette</translation>
    </message>
    <message>
        <source>this is not a text file (UTF-8), so it is no recipe</source>
        <translation>ce n'est pas un fichier de texte (UTF-8), donc pas une recette</translation>
    </message>
    <message>
        <source>this is the vat of the old recipe; name the one it will be made in</source>
        <translation>c'est la cuve de l'ancienne recette ; nommez celle où elle sera faite</translation>
    </message>
    <message>
        <source>this is too large for a recipe ({said:.1f} MB, at most {max_bytes:.0f} MB)</source>
        <translation>c'est trop grand pour une recette ({said:.1f} Mo, au plus {max_bytes:.0f} Mo)</translation>
    </message>
    <message>
        <source>this is too large for a recipe ({size:.1f} MB, at most {max_bytes:.0f} MB)</source>
        <translation>c'est trop grand pour une recette ({size:.1f} Mo, au plus {max_bytes:.0f} Mo)</translation>
    </message>
    <message>
        <source>this lies before the lanes part, so it is the same for all; change it in the make itself</source>
        <translation>c'est avant la séparation des voies, donc pareil pour toutes ; changez-le dans la fabrication même</translation>
    </message>
    <message>
        <source>this milk clots in {relative:.2f} of the time of the one before; the same dose would flocculate in {value:.1f} instead of {wanted:.1f} min</source>
        <translation>ce lait coagule en {relative:.2f} du temps du précédent ; la même dose floculerait en {value:.1f} au lieu de {wanted:.1f} min</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>to after {called}</source>
        <translation>après {called}</translation>
    </message>
    <message>
        <source>to the front</source>
        <translation>au début</translation>
    </message>
    <message>
        <source>to {brine_water_l:g} L water</source>
        <translation>pour {brine_water_l:g} L d'eau</translation>
    </message>
    <message>
        <source>too little curd for one of these forms: one smaller cheese of the same proportions</source>
        <translation>trop peu de caillé pour un de ces moules : un fromage plus petit aux mêmes proportions</translation>
    </message>
    <message>
        <source>too little to measure: let 1 mL down to 10 mL with cool water and give {given:.1f} mL of that</source>
        <translation>trop peu à mesurer : étendez 1 mL à 10 mL d'eau fraîche et donnez-en {given:.1f} mL</translation>
    </message>
    <message>
        <source>too little to weigh: stir {weigh:g} g into {into:g} mL of sterile milk and give {take:.1f} mL of that</source>
        <translation>trop peu à peser : délayez {weigh:g} g dans {into:g} mL de lait stérile et donnez-en {take:.1f} mL</translation>
    </message>
    <message>
        <source>twenty drops to the millilitre; measure your own dropper</source>
        <translation>vingt gouttes au millilitre ; mesurez votre propre compte-gouttes</translation>
    </message>
    <message>
        <source>typical “{name}”</source>
        <translation>typical « {name} »</translation>
    </message>
    <message>
        <source>until pH {value} of the {of}, {latest}</source>
        <translation>jusqu'à pH {value} ({of}), {latest}</translation>
    </message>
    <message>
        <source>until the gel holds {value}, {latest}</source>
        <translation>jusqu'à ce que le gel tienne {value}, {latest}</translation>
    </message>
    <message>
        <source>until {value} acid in the {of}, {latest}</source>
        <translation>jusqu'à {value} d'acide ({of}), {latest}</translation>
    </message>
    <message>
        <source>until {value} of the milk has run off as whey, {latest}</source>
        <translation>jusqu'à ce que {value} du lait ait coulé en lactosérum, {latest}</translation>
    </message>
    <message>
        <source>until {value} × the flocculation time, {latest}</source>
        <translation>jusqu'à {value} × le temps de floculation, {latest}</translation>
    </message>
    <message>
        <source>until {value}, {latest}</source>
        <translation>jusqu'à {value}, {latest}</translation>
    </message>
    <message>
        <source>up to {high:.{decimals}f}</source>
        <translation>jusqu'à {high:.{decimals}f}</translation>
    </message>
    <message>
        <source>up to {high}</source>
        <translation>jusqu'à {high}</translation>
    </message>
    <message>
        <source>up to {said}</source>
        <translation>jusqu'à {said}</translation>
    </message>
    <message>
        <source>usual in {name}: {label_of}</source>
        <translation>usuel pour {name} : {label_of}</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>vat</source>
        <translation>cuve</translation>
    </message>
    <message>
        <source>version {number}</source>
        <translation>version {number}</translation>
    </message>
    <message>
        <source>version {number} put back</source>
        <translation>version {number} remise</translation>
    </message>
    <message>
        <source>walnut</source>
        <translation>noix</translation>
    </message>
    <message>
        <source>wash water</source>
        <translation>eau de lavage</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>poids</translation>
    </message>
    <message>
        <source>what no difference can say</source>
        <translation>ce qu'aucune différence ne peut dire</translation>
    </message>
    <message>
        <source>what was copied is no stage of a recipe</source>
        <translation>ce qui a été copié n'est pas une étape de recette</translation>
    </message>
    <message>
        <source>what was copied, {part}</source>
        <translation>ce qui a été copié, {part}</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>what went wrong</source>
        <translation>ce qui est allé de travers</translation>
    </message>
    <message>
        <source>wheat</source>
        <translation>blé</translation>
    </message>
    <message>
        <source>whey drawn at {least:g} % acid or more</source>
        <translation>lactosérum soutiré à {least:g} % d'acidité ou plus</translation>
    </message>
    <message>
        <source>whey off</source>
        <translation>lactosérum tiré</translation>
    </message>
    <message>
        <source>whey run off</source>
        <translation>lactosérum écoulé</translation>
    </message>
    <message>
        <source>windows after {source}</source>
        <translation>plages d'après {source}</translation>
    </message>
    <message>
        <source>with {load_kg}</source>
        <translation>avec {load_kg}</translation>
    </message>
    <message>
        <source>with {of}</source>
        <translation>avec {of}</translation>
    </message>
    <message>
        <source>with {stage}</source>
        <translation>avec {stage}</translation>
    </message>
    <message>
        <source>without {of}</source>
        <translation>sans {of}</translation>
    </message>
    <message>
        <source>without {stage}</source>
        <translation>sans {stage}</translation>
    </message>
    <message>
        <source>wording or order only</source>
        <translation>mots ou ordre seulement</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>your form</source>
        <translation>votre moule</translation>
    </message>
    <message>
        <source>{acidity_pct:g} % acid</source>
        <translation>{acidity_pct:g} % d'acide</translation>
    </message>
    <message>
        <source>{age_days:.0f} days; must be kept {least:g}{why}</source>
        <translation>{age_days:.0f} jours ; à garder {least:g}{why}</translation>
    </message>
    <message>
        <source>{amount} less</source>
        <translation>{amount} de moins</translation>
    </message>
    <message>
        <source>{amount} more</source>
        <translation>{amount} de plus</translation>
    </message>
    <message>
        <source>{away:.{decimals}f}{unit} {more} than the middle of the style</source>
        <translation>{away:.{decimals}f}{unit} {more} que le milieu du style</translation>
    </message>
    <message>
        <source>{away} over the least, {least}</source>
        <translation>{away} au-dessus de {least} (min.)</translation>
    </message>
    <message>
        <source>{away} over the limit of {limit}</source>
        <translation>{away} au-dessus de {limit} (max.)</translation>
    </message>
    <message>
        <source>{away} under the least, {least}</source>
        <translation>{away} sous {least} (min.)</translation>
    </message>
    <message>
        <source>{away} under the limit of {limit}</source>
        <translation>{away} sous {limit} (max.)</translation>
    </message>
    <message>
        <source>{cells:.1e} cells in a mL of milk</source>
        <translation>{cells:.1e} cellules par mL de lait</translation>
    </message>
    <message>
        <source>{chance} in 10</source>
        <translation>{chance} sur 10</translation>
    </message>
    <message>
        <source>{change:.1f} °C in {said} takes {kj:.2g} kW for so much milk; give the vat its power</source>
        <translation>{change:.1f} °C en {said} demandent {kj:.2g} kW pour tant de lait ; donnez à la cuve sa puissance</translation>
    </message>
    <message>
        <source>{coat} can do, with care</source>
        <translation>{coat} peut aller, avec précaution</translation>
    </message>
    <message>
        <source>{coat} suits</source>
        <translation>{coat} convient</translation>
    </message>
    <message>
        <source>{count:g} would be needed</source>
        <translation>il en faudrait {count:g}</translation>
    </message>
    <message>
        <source>{count} of {all}</source>
        <translation>{count} sur {all}</translation>
    </message>
    <message>
        <source>{count} pages written to {path}</source>
        <translation>{count} pages écrites dans {path}</translation>
    </message>
    <message>
        <source>{count} vats; at the most {most} can be told apart.</source>
        <translation>{count} cuves ; on n'en distingue pas plus de {most}.</translation>
    </message>
    <message>
        <source>{day}, {age} days old</source>
        <translation>{day}, {age} jours</translation>
    </message>
    <message>
        <source>{degree}, guess</source>
        <translation>{degree}, deviné</translation>
    </message>
    <message>
        <source>{degree}, read</source>
        <translation>{degree}, lu</translation>
    </message>
    <message>
        <source>{distance} over the usual {usual}</source>
        <translation>{distance} au-dessus de l'usage, {usual}</translation>
    </message>
    <message>
        <source>{distance} under the usual {usual}</source>
        <translation>{distance} sous l'usage, {usual}</translation>
    </message>
    <message>
        <source>{dose:.1f} IMCU/L of milk; may be typed so</source>
        <translation>{dose:.1f} IMCU/L de lait ; peut se saisir ainsi</translation>
    </message>
    <message>
        <source>{effect}: {quantity} {ours}, published {printed} ({source}; {have})</source>
        <translation>{effect} : {quantity} {ours}, publié {printed} ({source} ; {have})</translation>
    </message>
    <message>
        <source>{factor} times the milk</source>
        <translation>{factor} fois le lait</translation>
    </message>
    <message>
        <source>{factor} times the milk. Every line says by which rule it goes.</source>
        <translation>{factor} fois le lait. Chaque ligne dit par quelle règle elle va.</translation>
    </message>
    <message>
        <source>{file} can't be read as it stands now, so it is not written over. Mend it or take it away: the next change here is written again.</source>
        <translation>{file} est illisible en l'état, et n'est donc pas remplacé. Réparez-le ou retirez-le : le prochain changement fait ici sera écrit de nouveau.</translation>
    </message>
    <message>
        <source>{file} has format {format!r}; this program reads format {format2}.</source>
        <translation>{file} a le format {format!r} ; ce programme lit le format {format2}.</translation>
    </message>
    <message>
        <source>{file} is not a readable style: {error}.</source>
        <translation>{file} n'est pas un style lisible : {error}.</translation>
    </message>
    <message>
        <source>{file}, sources: each is a key and the work in full, as text.</source>
        <translation>{file}, sources : chacune est une clé et l'ouvrage en entier, en texte.</translation>
    </message>
    <message>
        <source>{floc} min, cut {time}</source>
        <translation>{floc} min, décailler {time}</translation>
    </message>
    <message>
        <source>{grams:.3g} g of this pack, which serves {serves:.0f} L</source>
        <translation>{grams:.3g} g de ce sachet, qui suffit à {serves:.0f} L</translation>
    </message>
    <message>
        <source>{group}: {inside} of {n} (80 % interval {spread})</source>
        <translation>{group} : {inside} sur {n} (intervalle à 80 % : {spread})</translation>
    </message>
    <message>
        <source>{head}: {how}. Still outside: {missed}.</source>
        <translation>{head} : {how}. Encore dehors : {missed}.</translation>
    </message>
    <message>
        <source>{head}: {text}</source>
        <translation>{head} : {text}</translation>
    </message>
    <message>
        <source>{heat_c} for {heat_min}</source>
        <translation>{heat_c} pendant {heat_min}</translation>
    </message>
    <message>
        <source>{key} = {value} has no unit; write for example {key} = "{example}"</source>
        <translation>{key} = {value} n'a pas d'unité ; écrivez par exemple {key} = "{example}"</translation>
    </message>
    <message>
        <source>{key} = “{value}” is unknown; {value2}</source>
        <translation>{key} = « {value} » est inconnu ; {value2}</translation>
    </message>
    <message>
        <source>{key} is a list of tables</source>
        <translation>{key} est une liste de tables</translation>
    </message>
    <message>
        <source>{key} is a table</source>
        <translation>{key} est une table</translation>
    </message>
    <message>
        <source>{key} is a text in quotes, not {value!r}</source>
        <translation>{key} est un texte entre guillemets, non {value!r}</translation>
    </message>
    <message>
        <source>{key} is a whole number, not {value!r}</source>
        <translation>{key} est un nombre entier, non {value!r}</translation>
    </message>
    <message>
        <source>{key} is missing</source>
        <translation>{key} manque</translation>
    </message>
    <message>
        <source>{key} is true or false, not {value!r}</source>
        <translation>{key} est true ou false, non {value!r}</translation>
    </message>
    <message>
        <source>{key} must be a {label}, for example {key} = "{example}"</source>
        <translation>{key} doit être : {label}, par exemple {key} = "{example}"</translation>
    </message>
    <message>
        <source>{key} “{one}” is none of: {allowed}</source>
        <translation>{key} « {one} » n'est pas parmi : {allowed}</translation>
    </message>
    <message>
        <source>{kinds}, {fat:.2f} % fat, {protein:.2f} % protein</source>
        <translation>{kinds}, {fat:.2f} % de matière grasse, {protein:.2f} % de protéines</translation>
    </message>
    <message>
        <source>{kind} starter</source>
        <translation>ferment {kind}</translation>
    </message>
    <message>
        <source>{label} = “{input}” is unknown; {input2}</source>
        <translation>{label} = « {input} » est inconnu ; {input2}</translation>
    </message>
    <message>
        <source>{label} can't be {input!r}</source>
        <translation>{label} ne peut être {input!r}</translation>
    </message>
    <message>
        <source>{label} can't be {value:g}.</source>
        <translation>{label} ne peut pas être {value:g}.</translation>
    </message>
    <message>
        <source>{label} can't be {value}; allowed is {allowed}</source>
        <translation>{label} ne peut être {value} ; permis : {allowed}</translation>
    </message>
    <message>
        <source>{label} of step {index}</source>
        <translation>{label}, palier {index}</translation>
    </message>
    <message>
        <source>{label} {value:.{decimals}f}, there {ends} {unit}</source>
        <translation>{label} {value:.{decimals}f}, là {ends} {unit}</translation>
    </message>
    <message>
        <source>{label}: the range wanted runs backwards.</source>
        <translation>{label} : la plage voulue est inversée.</translation>
    </message>
    <message>
        <source>{left:.0f} left after {months:g} months in the cold</source>
        <translation>il en reste {left:.0f} après {months:g} mois au froid</translation>
    </message>
    <message>
        <source>{left} against {right}</source>
        <translation>{left} contre {right}</translation>
    </message>
    <message>
        <source>{left} of milk against {right}; doses read per 100 kg of milk</source>
        <translation>{left} de lait contre {right} ; les doses se lisent pour 100 kg de lait</translation>
    </message>
    <message>
        <source>{litres} ({mass_kg}) of {milks} milk, {heat}</source>
        <translation>{litres} ({mass_kg}) de lait de {milks}, {heat}</translation>
    </message>
    <message>
        <source>{litres} of milk in each; each changes one thing</source>
        <translation>{litres} de lait dans chacune ; chacune change une chose</translation>
    </message>
    <message>
        <source>{load} for {length_min}</source>
        <translation>{load} pendant {length_min}</translation>
    </message>
    <message>
        <source>{low:.{decimals}f} or more</source>
        <translation>{low:.{decimals}f} ou plus</translation>
    </message>
    <message>
        <source>{low:g} to {high}</source>
        <translation>{low:g} à {high}</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} à {high}</translation>
    </message>
    <message>
        <source>{margin:.0f} days short of the {least:g} it must be kept{why}</source>
        <translation>il manque {margin:.0f} jours aux {least:g} où il doit être gardé{why}</translation>
    </message>
    <message>
        <source>{mass} at {density:.3f} kg/L</source>
        <translation>{mass} à {density:.3f} kg/L</translation>
    </message>
    <message>
        <source>{mass} here</source>
        <translation>{mass} ici</translation>
    </message>
    <message>
        <source>{mass} of milk in both</source>
        <translation>{mass} de lait dans les deux</translation>
    </message>
    <message>
        <source>{name} behind: 0.1 pH takes about {wait}; wait, not after {latest}. Ahead: go on at once.</source>
        <translation>{name} en retard : 0,1 pH prend environ {wait} ; attendre, pas après {latest}. En avance : continuer aussitôt.</translation>
    </message>
    <message>
        <source>{name} can't be written as a style file.</source>
        <translation>{name} ne peut être écrit comme fichier de style.</translation>
    </message>
    <message>
        <source>{name} has no rule set “{key}” (it has: {have}).</source>
        <translation>{name} n'a pas de jeu de règles « {key} » (il a : {have}).</translation>
    </message>
    <message>
        <source>{name} is not usually made of {strangers} milk.</source>
        <translation>{name} ne se fait pas d'habitude de lait de {strangers}.</translation>
    </message>
    <message>
        <source>{name} sets another way ({sentence}): that is another recipe, not a change of this one.</source>
        <translation>{name} caille autrement ({sentence}) : c'est une autre recette, non un changement de celle-ci.</translation>
    </message>
    <message>
        <source>{name}, the middle of its windows</source>
        <translation>{name}, le milieu de ses plages</translation>
    </message>
    <message>
        <source>{name}, {head}, to change: {how}.{tail}</source>
        <translation>{name}, {head}, à changer : {how}.{tail}</translation>
    </message>
    <message>
        <source>{name}: {count} vats side by side</source>
        <translation>{name} : {count} cuves côte à côte</translation>
    </message>
    <message>
        <source>{name}: {share_pct:g} % of the {of}</source>
        <translation>{name} : {share_pct:g} % ({of})</translation>
    </message>
    <message>
        <source>{of} added {after}</source>
        <translation>{of} ajouté {after}</translation>
    </message>
    <message>
        <source>{of} moved {after}</source>
        <translation>{of} déplacé {after}</translation>
    </message>
    <message>
        <source>{of} taken out</source>
        <translation>{of} retiré</translation>
    </message>
    <message>
        <source>{of} to fat lies between 0.3 and 5 in cheese milk, not at {ratio:g}</source>
        <translation>{of} sur matière grasse : entre 0,3 et 5 dans un lait de fromagerie, non à {ratio:g}</translation>
    </message>
    <message>
        <source>{out} is there already; name a new file for the recipe.</source>
        <translation>{out} existe déjà ; nommez un nouveau fichier pour la recette.</translation>
    </message>
    <message>
        <source>{out} is there already; name a new file for the style.</source>
        <translation>{out} existe déjà ; nommez un nouveau fichier pour le style.</translation>
    </message>
    <message>
        <source>{part_name} takes exactly one of {keys}; </source>
        <translation>{part_name} prend exactement un de {keys} ; </translation>
    </message>
    <message>
        <source>{place}, {curve} at {at}</source>
        <translation>{place}, {curve} à {at}</translation>
    </message>
    <message>
        <source>{place}: the word is none of {words}</source>
        <translation>{place} : le mot n'est pas parmi {words}</translation>
    </message>
    <message>
        <source>{place}“{name}” goes in at the stage “{at}”, which there is not</source>
        <translation>{place}« {name} » entre à l'étape « {at} », qui n'existe pas</translation>
    </message>
    <message>
        <source>{power_kw:g} kW brings so much milk up {change:.1f} °C in no less; more time for the acid</source>
        <translation>{power_kw:g} kW ne montent pas tant de lait de {change:.1f} °C en moins ; plus de temps pour l'acide</translation>
    </message>
    <message>
        <source>{power_kw:g} kW could do it in {shortest}; the pace is the recipe's</source>
        <translation>{power_kw:g} kW pourraient le faire en {shortest} ; le rythme est celui de la recette</translation>
    </message>
    <message>
        <source>{recipe}: as it is against {right}</source>
        <translation>{recipe} : l'actuel face à {right}</translation>
    </message>
    <message>
        <source>{recipe}: {left} against {right}</source>
        <translation>{recipe} : {left} face à {right}</translation>
    </message>
    <message>
        <source>{said!r} should be text, as in “&lt;= 39” or “8 to 18”</source>
        <translation>{said!r} devrait être un texte, comme « &lt;= 39 » ou « 8 to 18 »</translation>
    </message>
    <message>
        <source>{said} are given</source>
        <translation>{said} sont donnés</translation>
    </message>
    <message>
        <source>{said}; and {found} more</source>
        <translation>{said} ; et {found} de plus</translation>
    </message>
    <message>
        <source>{said}; too firm: the other way.</source>
        <translation>{said} ; trop ferme : l'inverse.</translation>
    </message>
    <message>
        <source>{salt_pct:g} % of the milk</source>
        <translation>{salt_pct:g} % du lait</translation>
    </message>
    <message>
        <source>{salt_pct:g} g to each kg of curd</source>
        <translation>{salt_pct:g} g par kg de caillé</translation>
    </message>
    <message>
        <source>{salt} salt</source>
        <translation>{salt} de sel</translation>
    </message>
    <message>
        <source>{seconds:g} min</source>
        <translation>{seconds:g} min</translation>
    </message>
    <message>
        <source>{size} cooler</source>
        <translation>{size} plus frais</translation>
    </message>
    <message>
        <source>{size} drier</source>
        <translation>{size} plus sec</translation>
    </message>
    <message>
        <source>{size} less whey off per 100 kg</source>
        <translation>{size} de lactosérum de moins pour 100 kg</translation>
    </message>
    <message>
        <source>{size} longer</source>
        <translation>{size} plus long</translation>
    </message>
    <message>
        <source>{size} moister</source>
        <translation>{size} plus humide</translation>
    </message>
    <message>
        <source>{size} more whey off per 100 kg</source>
        <translation>{size} de lactosérum de plus pour 100 kg</translation>
    </message>
    <message>
        <source>{size} shorter</source>
        <translation>{size} plus court</translation>
    </message>
    <message>
        <source>{size} warmer</source>
        <translation>{size} plus chaud</translation>
    </message>
    <message>
        <source>{species} milk</source>
        <translation>lait de {species}</translation>
    </message>
    <message>
        <source>{stage} after {other}</source>
        <translation>{stage} après {other}</translation>
    </message>
    <message>
        <source>{stage} earlier</source>
        <translation>{stage} plus tôt</translation>
    </message>
    <message>
        <source>{stage} later</source>
        <translation>{stage} plus tard</translation>
    </message>
    <message>
        <source>{stage}: left out</source>
        <translation>{stage} : omise</translation>
    </message>
    <message>
        <source>{stage}: put in</source>
        <translation>{stage} : ajoutée</translation>
    </message>
    <message>
        <source>{strength:g} IMCU/{unit}</source>
        <translation>{strength:g} IMCU/{unit}</translation>
    </message>
    <message>
        <source>{strength_pct:.1f} % w/w, {grams_per_litre:.1f} % w/v, {salt_per_water:.1f} g per 100 g water, {density_handbook_1974:.3f} kg/L at {temp_c:g} °C, {baume:.1f} °Bé, {saturation_pct:.0f} % of saturation</source>
        <translation>{strength_pct:.1f} % p/p, {grams_per_litre:.1f} % p/v, {salt_per_water:.1f} g pour 100 g d'eau, {density_handbook_1974:.3f} kg/L à {temp_c:g} °C, {baume:.1f} °Bé, {saturation_pct:.0f} % de la saturation</translation>
    </message>
    <message>
        <source>{strength_pct:g} % by weight is no brine: a saturated one holds {saturated_pct} % (that is 35.9 g of salt per 100 g of water, the other way to say it).</source>
        <translation>{strength_pct:g} % en poids n'est pas une saumure : une saturée en contient {saturated_pct} % (soit 35,9 g de sel pour 100 g d'eau, l'autre façon de le dire).</translation>
    </message>
    <message>
        <source>{surface:.0f} cm² of surface a litre</source>
        <translation>{surface:.0f} cm² de surface par litre</translation>
    </message>
    <message>
        <source>{take_l} of a stock, see “On the amounts”</source>
        <translation>{take_l} d'une solution mère, voir « Sur les quantités »</translation>
    </message>
    <message>
        <source>{temp_c:.4g} °C for {seconds} is no listed pair; the nearest is {temp_c2:g} °C for {seconds2} ({rule}). The law counts this milk as raw.</source>
        <translation>{temp_c:.4g} °C pendant {seconds} n'est pas un couple de la liste ; le plus proche est {temp_c2:g} °C pendant {seconds2} ({rule}). La loi compte ce lait comme cru.</translation>
    </message>
    <message>
        <source>{text} may stand for {low:.0f} to {high:.0f} IMCU/mL; ask for the bottle's own</source>
        <translation>{text} peut valoir de {low:.0f} à {high:.0f} IMCU/mL ; demandez la valeur du flacon même</translation>
    </message>
    <message>
        <source>{text}, base of {normal:.3g} N; another sample is another reading</source>
        <translation>{text}, base à {normal:.3g} N ; un autre échantillon donne une autre lecture</translation>
    </message>
    <message>
        <source>{thick:.0f} to {thick2:.0f} mm thick: salt goes in by the square of it</source>
        <translation>{thick:.0f} à {thick2:.0f} mm d'épaisseur : le sel entre selon son carré</translation>
    </message>
    <message>
        <source>{thickness_mm:.0f} to {thickness_mm2:.0f} mm thick: salt goes in by the square of it</source>
        <translation>{thickness_mm:.0f} à {thickness_mm2:.0f} mm d'épaisseur : le sel entre selon son carré</translation>
    </message>
    <message>
        <source>{title} after {title2}</source>
        <translation>{title} après {title2}</translation>
    </message>
    <message>
        <source>{title} first</source>
        <translation>{title} d'abord</translation>
    </message>
    <message>
        <source>{title} limits {what}, which is not known here.</source>
        <translation>{title} limite : {what}, qui n'est pas connu ici.</translation>
    </message>
    <message>
        <source>{title} speaks of {whose} milk, not of {strangers}; it is not judged.</source>
        <translation>{title} parle du lait de {whose}, non de {strangers} ; ce n'est pas jugé.</translation>
    </message>
    <message>
        <source>{title} {there} instead of {usual} {signed}</source>
        <translation>{title} {there} au lieu de {usual} {signed}</translation>
    </message>
    <message>
        <source>{title}: must be {least:g} days old before sale{why}.</source>
        <translation>{title} : doit avoir {least:g} jours avant la vente{why}.</translation>
    </message>
    <message>
        <source>{title}: usually ripened for {least:g} days or more.</source>
        <translation>{title} : affiné d'habitude {least:g} jours ou plus.</translation>
    </message>
    <message>
        <source>{units:g} units</source>
        <translation>{units:g} unités</translation>
    </message>
    <message>
        <source>{value:.2f} % acid, {of}</source>
        <translation>{value:.2f} % d'acide, {of}</translation>
    </message>
    <message>
        <source>{value:.2f} kg of cheese instead of {value2:.2f}</source>
        <translation>{value:.2f} kg de fromage au lieu de {value2:.2f}</translation>
    </message>
    <message>
        <source>{value:g} % of the milk off as whey</source>
        <translation>{value:g} % du lait écoulé en lactosérum</translation>
    </message>
    <message>
        <source>{volume} at {density:.3f} kg/L</source>
        <translation>{volume} à {density:.3f} kg/L</translation>
    </message>
    <message>
        <source>{weight:.1f} % w/v, {baume:.1f} °Bé, {density:.3f} kg/L, {share:.0f} % of saturation; {salt:.1f} kg of salt to 100 L of water. A point weaker wants {more:.2f} kg of salt to 100 kg of brine.</source>
        <translation>{weight:.1f} % p/v, {baume:.1f} °Bé, {density:.3f} kg/L, {share:.0f} % de la saturation ; {salt:.1f} kg de sel pour 100 L d'eau. Un point de moins demande {more:.2f} kg de sel pour 100 kg de saumure.</translation>
    </message>
    <message>
        <source>{what}: grams = {cells:.2g} ÷ CFU per gram on the pack.</source>
        <translation>{what} : grammes = {cells:.2g} ÷ UFC par gramme du sachet.</translation>
    </message>
    <message>
        <source>{what}: grams = {units:g} × grams in the pack ÷ units in the pack.</source>
        <translation>{what} : grammes = {units:g} × grammes du sachet ÷ unités du sachet.</translation>
    </message>
    <message>
        <source>{what}: too little to weigh. Stir {weigh_kg} into {into_l} of sterile milk and give {take_l} of that.</source>
        <translation>{what} : trop peu à peser. Délayez {weigh_kg} dans {into_l} de lait stérile et donnez-en {take_l}.</translation>
    </message>
    <message>
        <source>{when} is before the cheese was made.</source>
        <translation>{when} est avant la fabrication du fromage.</translation>
    </message>
    <message>
        <source>{whole} can be read two ways; write {plain} or {said}.</source>
        <translation>{whole} peut se lire de deux façons ; écrivez {plain} ou {said}.</translation>
    </message>
    <message>
        <source>{whole} differs from country to country; write “{size_only_us}” or mL.</source>
        <translation>{whole} diffère d'un pays à l'autre ; écrivez « {size_only_us} » ou mL.</translation>
    </message>
    <message>
        <source>{whole} divides by nothing.</source>
        <translation>{whole} divise par rien.</translation>
    </message>
    <message>
        <source>{whole} has no unit; write for example “{example}”.</source>
        <translation>{whole} n'a pas d'unité ; écrivez par exemple « {example} ».</translation>
    </message>
    <message>
        <source>{whole} has the unknown unit “{name}”; write for example “{example}”.</source>
        <translation>{whole} a une unité inconnue, « {name} » ; écrivez par exemple « {example} ».</translation>
    </message>
    <message>
        <source>{whole} has two sizes; write “US {size}” or “imp {size}”.</source>
        <translation>{whole} a deux tailles ; écrivez « US {size} » ou « imp {size} ».</translation>
    </message>
    <message>
        <source>{whole} is not a number with a unit.</source>
        <translation>{whole} n'est pas un nombre avec une unité.</translation>
    </message>
    <message>
        <source>{whole} is not a time of day; write for example “07:30”.</source>
        <translation>{whole} n'est pas une heure ; écrivez par exemple « 07:30 ».</translation>
    </message>
    <message>
        <source>{whole} is not a {label}; write for example “{example}”.</source>
        <translation>{whole} : ce n'est pas « {label} » ; écrivez par exemple « {example} ».</translation>
    </message>
    <message>
        <source>{whole} is too long for a quantity ({length} characters, at most {most}).</source>
        <translation>{whole} est trop long pour une grandeur ({length} caractères, au plus {most}).</translation>
    </message>
    <message>
        <source>{whole} looks like a sum; write one number and its unit, for example “{example}”.</source>
        <translation>{whole} ressemble à un calcul ; écrivez un nombre et son unité, par exemple « {example} ».</translation>
    </message>
    <message>
        <source>{whole} mixes its units; write for example “{example}”.</source>
        <translation>{whole} mélange ses unités ; écrivez par exemple « {example} ».</translation>
    </message>
    <message>
        <source>{whole} says {found}, but {wanted} is asked for here; write for example “{example}”.</source>
        <translation>{whole} indique « {found} », alors que « {wanted} » est attendu ici ; écrivez par exemple « {example} ».</translation>
    </message>
    <message>
        <source>“acid” names which acid and belongs to what = "acid"</source>
        <translation>« acid » nomme l'acide et appartient à what = "acid"</translation>
    </message>
    <message>
        <source>“solution” belongs to an acid or to calcium chloride</source>
        <translation>« solution » appartient à un acide ou au chlorure de calcium</translation>
    </message>
    <message>
        <source>“{command} --help” tells more.</source>
        <translation>« {command} --help » en dit plus.</translation>
    </message>
    <message>
        <source>“{key}” is missing</source>
        <translation>« {key} » manque</translation>
    </message>
    <message>
        <source>“{key}” is no outcome; outcomes are for example moisture_pct, ph_24h, salt_in_moisture_pct.</source>
        <translation>« {key} » n'est pas un résultat ; par exemple moisture_pct, ph_24h, salt_in_moisture_pct.</translation>
    </message>
    <message>
        <source>“{key}” is not known there{hint}</source>
        <translation>« {key} » n'est pas connu là{hint}</translation>
    </message>
    <message>
        <source>“{key}” is unknown here; {key2}</source>
        <translation>« {key} » est inconnu ici ; {key2}</translation>
    </message>
    <message>
        <source>“{label}” can't be cut in two: what it does would be done twice</source>
        <translation>« {label} » ne peut être coupé en deux : ce qu'il fait serait fait deux fois</translation>
    </message>
    <message>
        <source>“{label}” can't end by {by}; it ends by {known}</source>
        <translation>« {label} » ne peut finir par {by} ; il finit par {known}</translation>
    </message>
    <message>
        <source>“{label}” is a {species} breed, not {species2}</source>
        <translation>« {label} » est une race de {species}, non de {species2}</translation>
    </message>
    <message>
        <source>“{match}” is no outcome; there are: {known}.</source>
        <translation>« {match} » n'est pas un résultat ; il y a : {known}.</translation>
    </message>
    <message>
        <source>“{names}” is unknown here; {names2}</source>
        <translation>« {names} » est inconnu ici ; {names2}</translation>
    </message>
    <message>
        <source>“{name}” goes in at a stage that was not copied with it</source>
        <translation>« {name} » entre à une étape qui n'a pas été copiée avec</translation>
    </message>
    <message>
        <source>“{name}” is the name of a style that comes with the program; give yours another.</source>
        <translation>« {name} » est le nom d'un style livré avec le programme ; donnez-en un autre au vôtre.</translation>
    </message>
    <message>
        <source>“{said}” can't be read; a range is written {match}={match2}..{match3}.</source>
        <translation>« {said} » ne peut être lu ; une plage s'écrit {match}={match2}..{match3}.</translation>
    </message>
    <message>
        <source>“{said}” can't be read; write for example moisture=38, ph_24h=5.1..5.2 or finish&lt;=12 h.</source>
        <translation>« {said} » ne peut être lu ; écrivez par exemple moisture=38, ph_24h=5.1..5.2 ou finish&lt;=12 h.</translation>
    </message>
    <message>
        <source>“{said}” is no range; write “&lt;= 39”, “&gt;= 50”, “&gt; 52, &lt;= 60” or “8 to 18”</source>
        <translation>« {said} » n'est pas une plage ; écrivez « &lt;= 39 », « &gt;= 50 », « &gt; 52, &lt;= 60 » ou « 8 to 18 »</translation>
    </message>
    <message>
        <source>“{said}” runs backwards</source>
        <translation>« {said} » est inversé</translation>
    </message>
    <message>
        <source>“{text}” is no moment; write it as 2024-05-07 11:40, or 11:40 on the day of the make.</source>
        <translation>« {text} » n'est pas un moment ; écrivez-le comme 2024-05-07 11:40, ou 11:40 le jour de la fabrication.</translation>
    </message>
    <message>
        <source>“{text}” is no size of curd; known are {names}, or a length such as 10 mm.</source>
        <translation>« {text} » n'est pas une taille de grain ; on connaît {names}, ou une longueur comme 10 mm.</translation>
    </message>
    <message>
        <source>“{text}” is no size; write it as 1366x768, each from 200 to 8000.</source>
        <translation>« {text} » n'est pas une taille ; écrivez-la comme 1366x768, chaque nombre de 200 à 8000.</translation>
    </message>
</context>
<context>
    <name>field</name>
    <message>
        <source>0 at rest, 1 gently stirred, 2 briskly.</source>
        <translation>0 au repos, 1 brassé doucement, 2 vivement.</translation>
    </message>
    <message>
        <source>0 left as a bed, 0.3 pushed aside, 1 stirred dry, 2 worked dry.</source>
        <translation>0 laissé en gâteau, 0,3 écarté, 1 brassé à sec, 2 travaillé à sec.</translation>
    </message>
    <message>
        <source>A remark for the plan.</source>
        <translation>Une remarque pour la fiche.</translation>
    </message>
    <message>
        <source>Activity units given.</source>
        <translation>Unités d'activité données.</translation>
    </message>
    <message>
        <source>Activity units of a pack.</source>
        <translation>Unités d'activité d'un sachet.</translation>
    </message>
    <message>
        <source>Additions of this branch.</source>
        <translation>Ajouts de cette branche.</translation>
    </message>
    <message>
        <source>Additions.</source>
        <translation>Ajouts.</translation>
    </message>
    <message>
        <source>Amount as share of the milk's mass.</source>
        <translation>Quantité en part de la masse du lait.</translation>
    </message>
    <message>
        <source>Amount by mass.</source>
        <translation>Quantité en masse.</translation>
    </message>
    <message>
        <source>Amount by volume.</source>
        <translation>Quantité en volume.</translation>
    </message>
    <message>
        <source>Animal.</source>
        <translation>Animal.</translation>
    </message>
    <message>
        <source>Branches.</source>
        <translation>Branches.</translation>
    </message>
    <message>
        <source>Casein, g per 100 g.</source>
        <translation>Caséine, g pour 100 g.</translation>
    </message>
    <message>
        <source>Cells given to each mL of milk.</source>
        <translation>Cellules données à chaque mL de lait.</translation>
    </message>
    <message>
        <source>Coat of this branch.</source>
        <translation>Croûte ou enrobage de cette branche.</translation>
    </message>
    <message>
        <source>Dairy.</source>
        <translation>Laiterie.</translation>
    </message>
    <message>
        <source>Diameter of the plate that presses; else the cheese's face.</source>
        <translation>Diamètre du plateau qui presse ; sinon la face du fromage.</translation>
    </message>
    <message>
        <source>Dry salt strewn.</source>
        <translation>Sel sec semé.</translation>
    </message>
    <message>
        <source>Edge of the chips.</source>
        <translation>Arête des grains broyés.</translation>
    </message>
    <message>
        <source>Edge of the curd pieces.</source>
        <translation>Arête des grains de caillé.</translation>
    </message>
    <message>
        <source>Fat, g per 100 g.</source>
        <translation>Matière grasse, g pour 100 g.</translation>
    </message>
    <message>
        <source>Force on the cheese over the load hung up.</source>
        <translation>Force sur le fromage par rapport à la charge suspendue.</translation>
    </message>
    <message>
        <source>Form of this branch.</source>
        <translation>Moule de cette branche.</translation>
    </message>
    <message>
        <source>Form.</source>
        <translation>Moule.</translation>
    </message>
    <message>
        <source>Format of the file.</source>
        <translation>Format du fichier.</translation>
    </message>
    <message>
        <source>Freeze-dried or frozen, straight into the vat: longer to wake.</source>
        <translation>Lyophilisé ou congelé, directement en cuve : plus long à s'éveiller.</translation>
    </message>
    <message>
        <source>From late lactation: what is not given is richer, poorer in sugar and sweeter of pH.</source>
        <translation>De fin de lactation : ce qui n'est pas donné est plus riche, plus pauvre en sucre et de pH plus haut.</translation>
    </message>
    <message>
        <source>Has been frozen. Kept with the recipe; no law of the forecast answers to it.</source>
        <translation>A été congelé. Gardé avec la recette ; aucune loi de la prévision n'y répond.</translation>
    </message>
    <message>
        <source>Heat loss of that surface.</source>
        <translation>Perte de chaleur de cette surface.</translation>
    </message>
    <message>
        <source>Heat the jacket takes through that surface.</source>
        <translation>Chaleur que l'enveloppe prend par cette surface.</translation>
    </message>
    <message>
        <source>Heat treatment.</source>
        <translation>Traitement thermique.</translation>
    </message>
    <message>
        <source>Heated to.</source>
        <translation>Chauffé à.</translation>
    </message>
    <message>
        <source>Heating power.</source>
        <translation>Puissance de chauffe.</translation>
    </message>
    <message>
        <source>Height of the finished cheese.</source>
        <translation>Hauteur du fromage fini.</translation>
    </message>
    <message>
        <source>Held for.</source>
        <translation>Tenu pendant.</translation>
    </message>
    <message>
        <source>How long this load stays.</source>
        <translation>Durée de cette charge.</translation>
    </message>
    <message>
        <source>How many cheeses of one make.</source>
        <translation>Nombre de fromages d'une fabrication.</translation>
    </message>
    <message>
        <source>How often the slabs are turned; for the plan only.</source>
        <translation>Tous les combien les pains sont retournés ; pour la fiche seulement.</translation>
    </message>
    <message>
        <source>Kilograms of water to one of curd: the less, the more it cools. Left out, it is kept as hot.</source>
        <translation>Kilogrammes d'eau pour un de caillé : moins il y en a, plus elle refroidit. Laissé libre, elle est tenue aussi chaude.</translation>
    </message>
    <message>
        <source>Kind of coagulant.</source>
        <translation>Genre de coagulant.</translation>
    </message>
    <message>
        <source>Kind of culture.</source>
        <translation>Genre de ferment.</translation>
    </message>
    <message>
        <source>Kind of stage.</source>
        <translation>Genre d'étape.</translation>
    </message>
    <message>
        <source>Lactose, g per 100 g.</source>
        <translation>Lactose, g pour 100 g.</translation>
    </message>
    <message>
        <source>Liquid starter, share of the milk.</source>
        <translation>Ferment liquide, part du lait.</translation>
    </message>
    <message>
        <source>Living cells per gram, from the pack.</source>
        <translation>Cellules vivantes par gramme, selon le sachet.</translation>
    </message>
    <message>
        <source>Loads, in order.</source>
        <translation>Charges, dans l'ordre.</translation>
    </message>
    <message>
        <source>Loose curd that is stirred, or the faces of a formed cheese.</source>
        <translation>Caillé en grains que l'on brasse, ou faces d'un fromage moulé.</translation>
    </message>
    <message>
        <source>Lot.</source>
        <translation>Lot.</translation>
    </message>
    <message>
        <source>Mass of freeze-dried or frozen culture.</source>
        <translation>Masse de ferment lyophilisé ou congelé.</translation>
    </message>
    <message>
        <source>Mass of that pack.</source>
        <translation>Masse de ce sachet.</translation>
    </message>
    <message>
        <source>Milk by mass.</source>
        <translation>Lait en masse.</translation>
    </message>
    <message>
        <source>Milk by volume at 20 °C.</source>
        <translation>Lait en volume à 20 °C.</translation>
    </message>
    <message>
        <source>Milk in the vat.</source>
        <translation>Lait en cuve.</translation>
    </message>
    <message>
        <source>Minutes into that stage.</source>
        <translation>Minutes après le début de cette étape.</translation>
    </message>
    <message>
        <source>Name of the cheese.</source>
        <translation>Nom du fromage.</translation>
    </message>
    <message>
        <source>Not kept at its temperature: milk and whey left alone cool toward the room.</source>
        <translation>Non tenu en température : lait et lactosérum laissés seuls refroidissent vers le local.</translation>
    </message>
    <message>
        <source>Of a block or loaf.</source>
        <translation>D'un bloc ou d'un pain.</translation>
    </message>
    <message>
        <source>Of a block, loaf or pyramid's foot.</source>
        <translation>D'un bloc, d'un pain ou du pied d'une pyramide.</translation>
    </message>
    <message>
        <source>Of a round cheese.</source>
        <translation>D'un fromage rond.</translation>
    </message>
    <message>
        <source>Of curd: at the end of the stage, left out it stays. Of a formed cheese: the air it lies in, left out the make room.</source>
        <translation>Du caillé : à la fin de l'étape ; omise, elle reste. D'un fromage moulé : l'air où il repose ; omise, la salle de fabrication.</translation>
    </message>
    <message>
        <source>Planned length.</source>
        <translation>Durée prévue.</translation>
    </message>
    <message>
        <source>Preset of the breed; empty takes the average of the species.</source>
        <translation>Valeurs de la race ; vide prend la moyenne de l'espèce.</translation>
    </message>
    <message>
        <source>Pressure of the plates on the bed.</source>
        <translation>Pression des plaques sur le gâteau.</translation>
    </message>
    <message>
        <source>Pressure on the cheese.</source>
        <translation>Pression sur le fromage.</translation>
    </message>
    <message>
        <source>Put on this day after the make.</source>
        <translation>Posé ce jour après la fabrication.</translation>
    </message>
    <message>
        <source>Relative humidity of the room.</source>
        <translation>Humidité relative de la cave.</translation>
    </message>
    <message>
        <source>Remarks.</source>
        <translation>Remarques.</translation>
    </message>
    <message>
        <source>Rind or coat.</source>
        <translation>Croûte ou enrobage.</translation>
    </message>
    <message>
        <source>Salt in the brine by weight (100 g brine hold so many grams); saturated is 26.4 %.</source>
        <translation>Sel de la saumure en poids (100 g de saumure en contiennent tant de grammes) ; saturée, 26,4 %.</translation>
    </message>
    <message>
        <source>Salt in the water by weight.</source>
        <translation>Sel de l'eau en poids.</translation>
    </message>
    <message>
        <source>Season of the milk; what is not given shifts with it.</source>
        <translation>Saison du lait ; ce qui n'est pas donné change avec elle.</translation>
    </message>
    <message>
        <source>Shape of one cheese.</source>
        <translation>Forme d'un fromage.</translation>
    </message>
    <message>
        <source>Share of the free whey drawn before the water.</source>
        <translation>Part du lactosérum libre tirée avant l'eau.</translation>
    </message>
    <message>
        <source>Share of the free whey run off.</source>
        <translation>Part du lactosérum libre écoulée.</translation>
    </message>
    <message>
        <source>Share that goes this way.</source>
        <translation>Part qui va de ce côté.</translation>
    </message>
    <message>
        <source>Short stable name that drag handles, comments and readings hang on.</source>
        <translation>Nom court et stable auquel tiennent poignées, commentaires et lectures.</translation>
    </message>
    <message>
        <source>Short stable name; comments and readings hang on it.</source>
        <translation>Nom court et stable ; commentaires et lectures y tiennent.</translation>
    </message>
    <message>
        <source>Since the coagulant was made.</source>
        <translation>Depuis que le coagulant a été fait.</translation>
    </message>
    <message>
        <source>Stage it goes in at.</source>
        <translation>Étape où il entre.</translation>
    </message>
    <message>
        <source>Stage it goes in at; empty: the first that ripens, else the first.</source>
        <translation>Étape où il entre ; vide : la première qui mature, sinon la première.</translation>
    </message>
    <message>
        <source>Stage of the main make after which it parts.</source>
        <translation>Étape de la fabrication principale après laquelle elle part.</translation>
    </message>
    <message>
        <source>Stages of the make, in order.</source>
        <translation>Étapes de la fabrication, dans l'ordre.</translation>
    </message>
    <message>
        <source>Stages of this branch.</source>
        <translation>Étapes de cette branche.</translation>
    </message>
    <message>
        <source>Starters of this branch.</source>
        <translation>Ferments de cette branche.</translation>
    </message>
    <message>
        <source>Starters.</source>
        <translation>Ferments.</translation>
    </message>
    <message>
        <source>Strength of the solution by weight; dry is 100 %.</source>
        <translation>Force de la solution en poids ; sec, c'est 100 %.</translation>
    </message>
    <message>
        <source>Strength on the bottle or tub, IMCU per mL or g.</source>
        <translation>Force sur le flacon ou le pot, IMCU par mL ou g.</translation>
    </message>
    <message>
        <source>Style it is checked against, e.g. cheddar.</source>
        <translation>Style d'après lequel il est contrôlé, par exemple cheddar.</translation>
    </message>
    <message>
        <source>Style it is checked against; empty: that of the recipe, for curd.</source>
        <translation>Style d'après lequel elle est contrôlée ; vide : celui de la recette, pour du caillé.</translation>
    </message>
    <message>
        <source>Surface that loses heat.</source>
        <translation>Surface qui perd de la chaleur.</translation>
    </message>
    <message>
        <source>Surface the cooling water works through; left out, most of the vat.</source>
        <translation>Surface par où agit l'eau de refroidissement ; sinon, presque toute la cuve.</translation>
    </message>
    <message>
        <source>Temperature as it goes into the vat.</source>
        <translation>Température à l'entrée en cuve.</translation>
    </message>
    <message>
        <source>Temperature at the end of the stage; left out, it stays as it is.</source>
        <translation>Température à la fin de l'étape ; sinon, elle reste comme elle est.</translation>
    </message>
    <message>
        <source>Temperature of the brine.</source>
        <translation>Température de la saumure.</translation>
    </message>
    <message>
        <source>Temperature of the make room.</source>
        <translation>Température du local de fabrication.</translation>
    </message>
    <message>
        <source>Temperature of the room; left out, that of the recipe.</source>
        <translation>Température du local ; sinon, celle de la recette.</translation>
    </message>
    <message>
        <source>Temperature of the water in the jacket when the vat is cooled.</source>
        <translation>Température de l'eau de l'enveloppe quand la cuve est refroidie.</translation>
    </message>
    <message>
        <source>Temperature of the water.</source>
        <translation>Température de l'eau.</translation>
    </message>
    <message>
        <source>Temperature of the whey or water.</source>
        <translation>Température du lactosérum ou de l'eau.</translation>
    </message>
    <message>
        <source>Temperature to reach; for an end by temperature the end says it.</source>
        <translation>Température à atteindre ; pour une fin par température, la fin la dit.</translation>
    </message>
    <message>
        <source>The stage ends then at the latest; every end by a state needs it.</source>
        <translation>L'étape finit alors au plus tard ; toute fin par un état en a besoin.</translation>
    </message>
    <message>
        <source>The state asked for.</source>
        <translation>L'état demandé.</translation>
    </message>
    <message>
        <source>The state is not looked for before this.</source>
        <translation>L'état n'est pas cherché avant.</translation>
    </message>
    <message>
        <source>Thickness of the slices.</source>
        <translation>Épaisseur des tranches.</translation>
    </message>
    <message>
        <source>Time kept cold since milking.</source>
        <translation>Temps gardé au froid depuis la traite.</translation>
    </message>
    <message>
        <source>Time of day when the milk is in the vat.</source>
        <translation>Heure où le lait est en cuve.</translation>
    </message>
    <message>
        <source>Time to add the water.</source>
        <translation>Temps pour ajouter l'eau.</translation>
    </message>
    <message>
        <source>Time to draw the whey.</source>
        <translation>Temps pour tirer le lactosérum.</translation>
    </message>
    <message>
        <source>Time to reach that temperature, held afterwards; left out, the whole stage.</source>
        <translation>Temps pour atteindre cette température, tenue ensuite ; sinon, toute l'étape.</translation>
    </message>
    <message>
        <source>Titratable acidity of a liquid starter.</source>
        <translation>Acidité titrable d'un ferment liquide.</translation>
    </message>
    <message>
        <source>Total protein (nitrogen × 6.38), g per 100 g.</source>
        <translation>Protéines totales (azote × 6,38), g pour 100 g.</translation>
    </message>
    <message>
        <source>Units of this pack that do as 1 % bulk starter in 100 L.</source>
        <translation>Unités de ce sachet qui valent 1 % de levain dans 100 L.</translation>
    </message>
    <message>
        <source>Vat.</source>
        <translation>Cuve.</translation>
    </message>
    <message>
        <source>Water added, as share of the milk's mass.</source>
        <translation>Eau ajoutée, en part de la masse du lait.</translation>
    </message>
    <message>
        <source>Water added, as volume.</source>
        <translation>Eau ajoutée, en volume.</translation>
    </message>
    <message>
        <source>Weight hung on the press, before its lever.</source>
        <translation>Poids suspendu à la presse, avant son levier.</translation>
    </message>
    <message>
        <source>What ends the stage.</source>
        <translation>Ce qui finit l'étape.</translation>
    </message>
    <message>
        <source>What goes in.</source>
        <translation>Ce qui entre.</translation>
    </message>
    <message>
        <source>What goes this way.</source>
        <translation>Ce qui va de ce côté.</translation>
    </message>
    <message>
        <source>What the maker calls it.</source>
        <translation>Comment le fabricant l'appelle.</translation>
    </message>
    <message>
        <source>What the pH or acidity is read on.</source>
        <translation>Sur quoi le pH ou l'acidité se lit.</translation>
    </message>
    <message>
        <source>What the share is taken of.</source>
        <translation>De quoi la part est prise.</translation>
    </message>
    <message>
        <source>Which acid.</source>
        <translation>Quel acide.</translation>
    </message>
    <message>
        <source>Who makes it.</source>
        <translation>Qui le fait.</translation>
    </message>
    <message>
        <source>Withheld because of medicine: can't be used.</source>
        <translation>Écarté à cause d'un médicament : ne peut servir.</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>acide</translation>
    </message>
    <message>
        <source>acidity</source>
        <translation>acidité</translation>
    </message>
    <message>
        <source>activity units</source>
        <translation>unités d'activité</translation>
    </message>
    <message>
        <source>add over</source>
        <translation>ajouter en</translation>
    </message>
    <message>
        <source>addition</source>
        <translation>ajout</translation>
    </message>
    <message>
        <source>after</source>
        <translation>après</translation>
    </message>
    <message>
        <source>age</source>
        <translation>âge</translation>
    </message>
    <message>
        <source>area</source>
        <translation>surface</translation>
    </message>
    <message>
        <source>at</source>
        <translation>à l'étape</translation>
    </message>
    <message>
        <source>bath</source>
        <translation>bain</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>branche</translation>
    </message>
    <message>
        <source>breed</source>
        <translation>race</translation>
    </message>
    <message>
        <source>bulk starter</source>
        <translation>levain</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>casein</source>
        <translation>caséine</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>coat</source>
        <translation>croûte ou enrobage</translation>
    </message>
    <message>
        <source>cooling water</source>
        <translation>eau de refroidissement</translation>
    </message>
    <message>
        <source>count</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diamètre</translation>
    </message>
    <message>
        <source>direct</source>
        <translation>ensemencement direct</translation>
    </message>
    <message>
        <source>draw over</source>
        <translation>tirer en</translation>
    </message>
    <message>
        <source>earliest</source>
        <translation>au plus tôt</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>fat</source>
        <translation>matière grasse</translation>
    </message>
    <message>
        <source>follower</source>
        <translation>plateau</translation>
    </message>
    <message>
        <source>form</source>
        <translation>moule</translation>
    </message>
    <message>
        <source>format</source>
        <translation>format</translation>
    </message>
    <message>
        <source>from</source>
        <translation>dès</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelé</translation>
    </message>
    <message>
        <source>heat length</source>
        <translation>durée de chauffe</translation>
    </message>
    <message>
        <source>heat loss</source>
        <translation>perte de chaleur</translation>
    </message>
    <message>
        <source>heat temperature</source>
        <translation>température de chauffe</translation>
    </message>
    <message>
        <source>heat treatment</source>
        <translation>traitement thermique</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>id</source>
        <translation>id</translation>
    </message>
    <message>
        <source>jacket</source>
        <translation>enveloppe</translation>
    </message>
    <message>
        <source>jacket transfer</source>
        <translation>transfert de l'enveloppe</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>lactose</source>
        <translation>lactose</translation>
    </message>
    <message>
        <source>late lactation</source>
        <translation>fin de lactation</translation>
    </message>
    <message>
        <source>latest</source>
        <translation>au plus tard</translation>
    </message>
    <message>
        <source>length</source>
        <translation>durée</translation>
    </message>
    <message>
        <source>lever</source>
        <translation>levier</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>lait</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>notes</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>of</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>on a bottle (liquids 50-650, powders 1000-2300)</source>
        <translation>sur un flacon (liquides 50-650, poudres 1000-2300)</translation>
    </message>
    <message>
        <source>on a hand press</source>
        <translation>sur une presse à main</translation>
    </message>
    <message>
        <source>on a pack</source>
        <translation>sur un sachet</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH at 20 °C as delivered.</source>
        <translation>pH à 20 °C à la livraison.</translation>
    </message>
    <message>
        <source>pack weighs</source>
        <translation>masse du sachet</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lieu</translation>
    </message>
    <message>
        <source>potency</source>
        <translation>concentration</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>protein</source>
        <translation>protéines</translation>
    </message>
    <message>
        <source>room</source>
        <translation>local</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>sel</translation>
    </message>
    <message>
        <source>salt in the water</source>
        <translation>sel de l'eau</translation>
    </message>
    <message>
        <source>season</source>
        <translation>saison</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>share of</source>
        <translation>part de</translation>
    </message>
    <message>
        <source>size of chips</source>
        <translation>taille des grains broyés</translation>
    </message>
    <message>
        <source>size of cut</source>
        <translation>taille du grain</translation>
    </message>
    <message>
        <source>slice</source>
        <translation>tranche</translation>
    </message>
    <message>
        <source>solution</source>
        <translation>solution</translation>
    </message>
    <message>
        <source>species</source>
        <translation>espèce</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>start</source>
        <translation>début</translation>
    </message>
    <message>
        <source>starter</source>
        <translation>ferment</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>paliers</translation>
    </message>
    <message>
        <source>stirring out</source>
        <translation>brassage à sec</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>force</translation>
    </message>
    <message>
        <source>strewn on</source>
        <translation>semé sur</translation>
    </message>
    <message>
        <source>style</source>
        <translation>style</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>turn every</source>
        <translation>retourner toutes les</translation>
    </message>
    <message>
        <source>unheated</source>
        <translation>non chauffée</translation>
    </message>
    <message>
        <source>units for 100 L</source>
        <translation>unités pour 100 L</translation>
    </message>
    <message>
        <source>units in the pack</source>
        <translation>unités du sachet</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>vat</source>
        <translation>cuve</translation>
    </message>
    <message>
        <source>vigour</source>
        <translation>vigueur</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>warm over</source>
        <translation>chauffer en</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>water on</source>
        <translation>eau ajoutée</translation>
    </message>
    <message>
        <source>water per curd</source>
        <translation>eau par caillé</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>whey off</source>
        <translation>lactosérum tiré</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>withheld</source>
        <translation>écarté</translation>
    </message>
</context>
<context>
    <name>have</name>
    <message>
        <source>calibrated</source>
        <translation>calé</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>usage courant</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>usage courant, sans source</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>déduit</translation>
    </message>
    <message>
        <source>engineering default</source>
        <translation>valeur d'ingénieur par défaut</translation>
    </message>
    <message>
        <source>from memory (high)</source>
        <translation>de mémoire (sûr)</translation>
    </message>
    <message>
        <source>from memory (low)</source>
        <translation>de mémoire (peu sûr)</translation>
    </message>
    <message>
        <source>from memory (medium)</source>
        <translation>de mémoire (moyen)</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>published, read</source>
        <translation>publié, lu</translation>
    </message>
    <message>
        <source>published, read (abstract)</source>
        <translation>publié, lu (résumé)</translation>
    </message>
    <message>
        <source>published, read (abstract); common practice</source>
        <translation>publié, lu (résumé) ; usage courant</translation>
    </message>
    <message>
        <source>published, read (abstract); that it holds for lactic sets is derived</source>
        <translation>publié, lu (résumé) ; que cela vaille pour le caillage lactique est déduit</translation>
    </message>
    <message>
        <source>published, read (abstracts)</source>
        <translation>publié, lu (résumés)</translation>
    </message>
    <message>
        <source>the maker's own</source>
        <translation>du fabricant</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>&lt;number&gt;</source>
        <translation>&lt;nombre&gt;</translation>
    </message>
    <message>
        <source>&lt;path&gt;</source>
        <translation>&lt;chemin&gt;</translation>
    </message>
    <message>
        <source>&lt;text&gt;</source>
        <translation>&lt;texte&gt;</translation>
    </message>
    <message>
        <source>&lt;whole number&gt;</source>
        <translation>&lt;nombre entier&gt;</translation>
    </message>
    <message>
        <source>A command is missing.</source>
        <translation>Il manque une commande.</translation>
    </message>
    <message>
        <source>A first recipe for its milk in another style.</source>
        <translation>Une première recette pour son lait dans un autre style.</translation>
    </message>
    <message>
        <source>A house style of the batches that were liked.</source>
        <translation>Un style maison d'après les fabrications appréciées.</translation>
    </message>
    <message>
        <source>A recipe for another amount of milk, with the rule behind every line; nothing is silently multiplied.</source>
        <translation>Une recette pour une autre quantité de lait, avec la règle derrière chaque ligne ; rien n'est multiplié en silence.</translation>
    </message>
    <message>
        <source>A vat with this changed; “ID.FIELD” alone: low, usual, high.</source>
        <translation>Une cuve avec ceci de changé ; « ID.CHAMP » seul : bas, usuel, haut.</translation>
    </message>
    <message>
        <source>Another ledger than your own.</source>
        <translation>Un autre registre que le vôtre.</translation>
    </message>
    <message>
        <source>Arguments</source>
        <translation>Arguments </translation>
    </message>
    <message>
        <source>As “1366x768”; else two sizes.</source>
        <translation>Comme « 1366x768 » ; sinon deux tailles.</translation>
    </message>
    <message>
        <source>As “moisture=38”, “ph_24h=5.1..5.2”, “finish&lt;=12 h”.</source>
        <translation>Comme « moisture=38 », « ph_24h=5.1..5.2 », « finish&lt;=12 h ».</translation>
    </message>
    <message>
        <source>As “moisture”, “ph_24h” or “finish”.</source>
        <translation>Comme « moisture », « ph_24h » ou « finish ».</translation>
    </message>
    <message>
        <source>BRANCH</source>
        <translation>BRANCHE</translation>
    </message>
    <message>
        <source>Bring it inside the limits and ranges of its style.</source>
        <translation>L'amener dans les limites et plages de son style.</translation>
    </message>
    <message>
        <source>COMMAND ...</source>
        <translation>COMMANDE ...</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Commandes </translation>
    </message>
    <message>
        <source>Date of the make, printed in the head.</source>
        <translation>Date de la fabrication, imprimée en tête.</translation>
    </message>
    <message>
        <source>Design a cheese make: forecast a recipe, hold it against its style, print its plan.</source>
        <translation>Dessiner une fabrication de fromage : prévoir une recette, la contrôler selon son style, imprimer sa fiche.</translation>
    </message>
    <message>
        <source>Draws behind the ranges; 0 leaves them out.</source>
        <translation>Tirages derrière les plages ; 0 les laisse de côté.</translation>
    </message>
    <message>
        <source>Each reading, when and with what it was taken.</source>
        <translation>Chaque mesure, quand et avec quoi elle a été prise.</translation>
    </message>
    <message>
        <source>Explain an outcome, a setting or a law at three depths: a sentence, a paragraph, the law with its source.</source>
        <translation>Expliquer un résultat, un réglage ou une loi à trois profondeurs : une phrase, un paragraphe, la loi et sa source.</translation>
    </message>
    <message>
        <source>FILE</source>
        <translation>FICHIER</translation>
    </message>
    <message>
        <source>Folder for the pictures.</source>
        <translation>Dossier des images.</translation>
    </message>
    <message>
        <source>Forecast a recipe: when each stage ends, what the curves do, what cheese comes of it.</source>
        <translation>Prévoir une recette : quand finit chaque étape, ce que font les courbes, quel fromage en résulte.</translation>
    </message>
    <message>
        <source>HH:MM</source>
        <translation>HH:MM</translation>
    </message>
    <message>
        <source>Heating power of the vat, for example “12 kW”.</source>
        <translation>Puissance de chauffe de la cuve, par exemple « 12 kW ».</translation>
    </message>
    <message>
        <source>Hold the forecast against a style; exit code 1 where it does not meet a limit.</source>
        <translation>Contrôler la prévision selon un style ; code de sortie 1 si une limite n'est pas respectée.</translation>
    </message>
    <message>
        <source>ID</source>
        <translation>ID</translation>
    </message>
    <message>
        <source>ID.FIELD=VALUE</source>
        <translation>ID.CHAMP=VALEUR</translation>
    </message>
    <message>
        <source>Instead: a branch of this vat; given twice, one with the other.</source>
        <translation>Au lieu de cela : une branche de cette cuve ; donnée deux fois, l'une avec l'autre.</translation>
    </message>
    <message>
        <source>Instead: a version this recipe kept; given twice, one with the other.</source>
        <translation>À la place : une version gardée de cette recette ; donnée deux fois, l'une avec l'autre.</translation>
    </message>
    <message>
        <source>Instead: the middle of a style's windows.</source>
        <translation>Au lieu de cela : le milieu des plages d'un style.</translation>
    </message>
    <message>
        <source>Judge by these rule sets only.</source>
        <translation>Juger par ces jeux de règles seulement.</translation>
    </message>
    <message>
        <source>KEY</source>
        <translation>CLÉ</translation>
    </message>
    <message>
        <source>KW</source>
        <translation>KW</translation>
    </message>
    <message>
        <source>Language of what is said: en or fr.</source>
        <translation>Langue de ce qui est dit : en ou fr.</translation>
    </message>
    <message>
        <source>Make a picture of every place and dialog of the window, in each theme and in two sizes.</source>
        <translation>Faire une image de chaque place et dialogue de la fenêtre, dans chaque thème et en deux tailles.</translation>
    </message>
    <message>
        <source>Milk in all, for example “300 L”.</source>
        <translation>Lait en tout, par exemple « 300 L ».</translation>
    </message>
    <message>
        <source>Milk in each vat.</source>
        <translation>Lait dans chaque cuve.</translation>
    </message>
    <message>
        <source>Milk in the vat at; else as the recipe says.</source>
        <translation>Heure du lait en cuve ; sinon celle de la recette.</translation>
    </message>
    <message>
        <source>More of the same form, or as many larger ones.</source>
        <translation>Plus du même moule, ou autant de plus grands.</translation>
    </message>
    <message>
        <source>NAME</source>
        <translation>NOM</translation>
    </message>
    <message>
        <source>OUTCOME</source>
        <translation>RÉSULTAT</translation>
    </message>
    <message>
        <source>OUT_DIR</source>
        <translation>DOSSIER</translation>
    </message>
    <message>
        <source>Only batches of this recipe.</source>
        <translation>Seulement les fabrications de cette recette.</translation>
    </message>
    <message>
        <source>Only mean errors, bands and effects of the makes.</source>
        <translation>Seulement les erreurs moyennes, bandes et effets des fabrications.</translation>
    </message>
    <message>
        <source>Only this place or picture.</source>
        <translation>Cette place ou image seulement.</translation>
    </message>
    <message>
        <source>Open the window on a recipe; without a display: forecast it, check it and write its plan.</source>
        <translation>Ouvrir la fenêtre sur une recette ; sans écran : la prévoir, la contrôler et écrire sa fiche.</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Options </translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Paper size.</source>
        <translation>Format du papier.</translation>
    </message>
    <message>
        <source>Print JSON for a machine.</source>
        <translation>Écrire du JSON pour une machine.</translation>
    </message>
    <message>
        <source>Print the JSON Schema of a recipe file, for editors.</source>
        <translation>Écrire le schéma JSON d'un fichier de recette, pour les éditeurs.</translation>
    </message>
    <message>
        <source>Print the targets, or leave them open.</source>
        <translation>Imprimer les cibles, ou les laisser ouvertes.</translation>
    </message>
    <message>
        <source>Print the version and end.</source>
        <translation>Écrire la version et finir.</translation>
    </message>
    <message>
        <source>Published figures beside ours: laws, then whole makes. Exit code 1 where a law misses its tolerance.</source>
        <translation>Chiffres publiés à côté des nôtres : lois, puis fabrications entières. Code de sortie 1 si une loi manque sa tolérance.</translation>
    </message>
    <message>
        <source>RECIPE</source>
        <translation>RECETTE</translation>
    </message>
    <message>
        <source>Recipe file (TOML).</source>
        <translation>Fichier de recette (TOML).</translation>
    </message>
    <message>
        <source>Recipe file; else the start page.</source>
        <translation>Fichier de recette ; sinon la page de début.</translation>
    </message>
    <message>
        <source>Recipe shown; else an example.</source>
        <translation>Recette montrée ; sinon un exemple.</translation>
    </message>
    <message>
        <source>STYLE</source>
        <translation>STYLE</translation>
    </message>
    <message>
        <source>Several small vats side by side, each changing one thing: what comes of each.</source>
        <translation>Plusieurs petites cuves côte à côte, chacune changeant une chose : ce qui résulte de chacune.</translation>
    </message>
    <message>
        <source>Show this help and end.</source>
        <translation>Afficher cette aide et finir.</translation>
    </message>
    <message>
        <source>So many settings, the strongest.</source>
        <translation>Autant de réglages, les plus forts.</translation>
    </message>
    <message>
        <source>Style; else the one the recipe names.</source>
        <translation>Style ; sinon celui que nomme la recette.</translation>
    </message>
    <message>
        <source>THEME</source>
        <translation>THÈME</translation>
    </message>
    <message>
        <source>The branch whose outcome it is.</source>
        <translation>La branche dont c'est le résultat.</translation>
    </message>
    <message>
        <source>The branch whose outcomes are wanted.</source>
        <translation>La branche dont on veut les résultats.</translation>
    </message>
    <message>
        <source>The invented batches of the example dairy.</source>
        <translation>Les fabrications inventées de la laiterie d'exemple.</translation>
    </message>
    <message>
        <source>The made batches: what was measured and tasted, and a house style of those that were liked.</source>
        <translation>Les fabrications réalisées : ce qui a été mesuré et dégusté, et un style maison d'après celles qui ont plu.</translation>
    </message>
    <message>
        <source>The other recipe.</source>
        <translation>L'autre recette.</translation>
    </message>
    <message>
        <source>The smallest natural change that brings outcomes where they are wanted; exit code 1 where it can't be reached.</source>
        <translation>Le plus petit changement naturel qui amène les résultats où on les veut ; code de sortie 1 s'il ne peut être atteint.</translation>
    </message>
    <message>
        <source>There is no command {name}.</source>
        <translation>Il n'y a pas de commande {name}.</translation>
    </message>
    <message>
        <source>There is no command {name}. Did you mean {near}?</source>
        <translation>Il n'y a pas de commande {name}. Vouliez-vous dire {near} ?</translation>
    </message>
    <message>
        <source>There is no option {name}.</source>
        <translation>Il n'y a pas d'option {name}.</translation>
    </message>
    <message>
        <source>There is no option {name}. Did you mean {near}?</source>
        <translation>Il n'y a pas d'option {name}. Vouliez-vous dire {near} ?</translation>
    </message>
    <message>
        <source>This is one too many: {name}.</source>
        <translation>Ceci est de trop : {name}.</translation>
    </message>
    <message>
        <source>Two makes beside each other by what their stages do, with what each difference is worth.</source>
        <translation>Deux fabrications côte à côte d'après ce que font leurs étapes, avec ce que vaut chaque différence.</translation>
    </message>
    <message>
        <source>Units of measure.</source>
        <translation>Unités de mesure.</translation>
    </message>
    <message>
        <source>VOLUME</source>
        <translation>VOLUME</translation>
    </message>
    <message>
        <source>WANTED</source>
        <translation>VOULU</translation>
    </message>
    <message>
        <source>What moves an outcome: each setting, the strongest first, with what a natural step more and less of it does.</source>
        <translation>Ce qui fait bouger un résultat : chaque réglage, le plus fort d'abord, avec ce que fait un cran naturel de plus et de moins.</translation>
    </message>
    <message>
        <source>What must stay: a stage, a dose, or ID.FIELD.</source>
        <translation>Ce qui doit rester : une étape, une dose, ou ID.CHAMP.</translation>
    </message>
    <message>
        <source>Where to; else beside you.</source>
        <translation>Où l'écrire ; sinon à côté de vous.</translation>
    </message>
    <message>
        <source>Which topic; without it: the list.</source>
        <translation>Quel sujet ; sans lui : la liste.</translation>
    </message>
    <message>
        <source>Write a sheet for learners as a PDF, with the targets or without them.</source>
        <translation>Écrire une feuille pour apprenants en PDF, avec ou sans les cibles.</translation>
    </message>
    <message>
        <source>Write it as a PDF as well.</source>
        <translation>L'écrire aussi en PDF.</translation>
    </message>
    <message>
        <source>Write the new recipe here.</source>
        <translation>Écrire ici la nouvelle recette.</translation>
    </message>
    <message>
        <source>Write the plan of the make as a PDF: weigh-out, stages with clock and targets, the curve, cautions.</source>
        <translation>Écrire la fiche de fabrication en PDF : pesées, étapes avec heures et cibles, la courbe, mises en garde.</translation>
    </message>
    <message>
        <source>Write the style here.</source>
        <translation>Écrire le style ici.</translation>
    </message>
    <message>
        <source>WxH</source>
        <translation>LxH</translation>
    </message>
    <message>
        <source>[OPTIONS]</source>
        <translation>[OPTIONS]</translation>
    </message>
    <message>
        <source>[OTHER]</source>
        <translation>[AUTRE]</translation>
    </message>
    <message>
        <source>[RECIPE]</source>
        <translation>[RECETTE]</translation>
    </message>
    <message>
        <source>[TOPIC]</source>
        <translation>[SUJET]</translation>
    </message>
    <message>
        <source>at least {value}.</source>
        <translation>au moins {value}.</translation>
    </message>
    <message>
        <source>at most {value}.</source>
        <translation>au plus {value}.</translation>
    </message>
    <message>
        <source>else {value}</source>
        <translation>sinon {value}</translation>
    </message>
    <message>
        <source>it takes a number.</source>
        <translation>il faut un nombre.</translation>
    </message>
    <message>
        <source>it takes a whole number.</source>
        <translation>il faut un nombre entier.</translation>
    </message>
    <message>
        <source>light, dark or contrast; else all.</source>
        <translation>light, dark ou contrast ; sinon tous.</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nécessaire</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>de {low} à {high}</translation>
    </message>
    <message>
        <source>{name} is missing.</source>
        <translation>Il manque {name}.</translation>
    </message>
    <message>
        <source>{name} takes a value after it.</source>
        <translation>{name} veut une valeur après.</translation>
    </message>
    <message>
        <source>{name} takes no value.</source>
        <translation>{name} ne prend pas de valeur.</translation>
    </message>
    <message>
        <source>{value} is not one of {near}.</source>
        <translation>{value} n'est pas parmi {near}.</translation>
    </message>
    <message>
        <source>{value} is not within {range}.</source>
        <translation>{value} n'est pas dans {range}.</translation>
    </message>
</context>
<context>
    <name>kind</name>
    <message>
        <source>activity units</source>
        <translation>unités d'activité</translation>
    </message>
    <message>
        <source>area</source>
        <translation>surface</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>concentration</source>
        <translation>concentration</translation>
    </message>
    <message>
        <source>density</source>
        <translation>masse volumique</translation>
    </message>
    <message>
        <source>firmness</source>
        <translation>fermeté</translation>
    </message>
    <message>
        <source>heat transfer</source>
        <translation>transfert de chaleur</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>length of time</source>
        <translation>durée</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>multiple</source>
        <translation>multiple</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>potency</source>
        <translation>concentration en germes</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>rate of warming</source>
        <translation>vitesse de chauffe</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>rapport</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>force</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>temperature difference</source>
        <translation>écart de température</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>titratable acidity</source>
        <translation>acidité titrable</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
</context>
<context>
    <name>knit</name>
    <message>
        <source>A bag is a safe second choice.</source>
        <translation>Un sac est un second choix sûr.</translation>
    </message>
    <message>
        <source>A closed face takes wax, once it is dry.</source>
        <translation>Une face fermée prend la cire, une fois sèche.</translation>
    </message>
    <message>
        <source>A natural rind can do, if small gaps are filled and smoothed in the first days.</source>
        <translation>Une croûte naturelle est possible si les petits vides sont comblés et lissés les premiers jours.</translation>
    </message>
    <message>
        <source>Cloth and fat bridge small gaps; rub the fat well into them.</source>
        <translation>Toile et graisse pontent les petits vides ; faites bien pénétrer la graisse.</translation>
    </message>
    <message>
        <source>Cloth will lie smooth on it.</source>
        <translation>La toile s'y posera lisse.</translation>
    </message>
    <message>
        <source>Crevices under cloth mould through.</source>
        <translation>Les crevasses sous la toile moisissent à cœur.</translation>
    </message>
    <message>
        <source>Every crevice lets mould and mites in; a natural rind will not hold.</source>
        <translation>Chaque crevasse laisse entrer moisissures et acariens ; une croûte naturelle ne tiendra pas.</translation>
    </message>
    <message>
        <source>It does better sealed in a vacuum bag, if its conditions hold.</source>
        <translation>Il est mieux scellé en sac sous vide, si ses conditions sont tenues.</translation>
    </message>
    <message>
        <source>Mould finds its way through cloth into the openings.</source>
        <translation>La moisissure passe à travers la toile dans les ouvertures.</translation>
    </message>
    <message>
        <source>Nothing in the knit asks for a bag.</source>
        <translation>Rien dans la soudure ne demande un sac.</translation>
    </message>
    <message>
        <source>Openings at the face let mould in; expect mould between the grains under a natural rind.</source>
        <translation>Les ouvertures de la face laissent entrer la moisissure ; attendez-en entre les grains sous une croûte naturelle.</translation>
    </message>
    <message>
        <source>Sealed in a vacuum bag it does best, if its conditions hold.</source>
        <translation>Scellé en sac sous vide, il est au mieux, si ses conditions sont tenues.</translation>
    </message>
    <message>
        <source>Small gaps hold air under wax: fill and smooth them first.</source>
        <translation>Les petits vides tiennent de l'air sous la cire : comblez-les et lissez-les d'abord.</translation>
    </message>
    <message>
        <source>The faces can carry a natural rind.</source>
        <translation>Les faces peuvent porter une croûte naturelle.</translation>
    </message>
    <message>
        <source>Wax cannot close crevices; whey and mould sit under it.</source>
        <translation>La cire ne ferme pas les crevasses ; lactosérum et moisissure restent dessous.</translation>
    </message>
    <message>
        <source>Whey and air in the openings loosen wax, and mould grows under it.</source>
        <translation>Lactosérum et air dans les ouvertures décollent la cire, et la moisissure pousse dessous.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>bien soudé</translation>
    </message>
    <message>
        <source>cool the milled curd to 27-32 °C before it is formed</source>
        <translation>refroidissez le caillé broyé à 27-32 °C avant le moulage</translation>
    </message>
    <message>
        <source>creviced</source>
        <translation>crevassé</translation>
    </message>
    <message>
        <source>form and press earlier, or less starter</source>
        <translation>moulez et pressez plus tôt, ou moins de ferment</translation>
    </message>
    <message>
        <source>form from a bed pressed under the whey, or dress and press again under vacuum</source>
        <translation>moulez à partir d'un gâteau pressé sous lactosérum, ou rhabillez et pressez encore sous vide</translation>
    </message>
    <message>
        <source>form the curd moister: less stirring dry, or a shorter cook</source>
        <translation>moulez le caillé plus humide : moins de brassage à sec, ou un chauffage plus court</translation>
    </message>
    <message>
        <source>it is pressed at {early_kpa:.0f} kPa in its first quarter of an hour; the skin closes, whey stays between.</source>
        <translation>il est pressé à {early_kpa:.0f} kPa dans son premier quart d'heure ; la peau se ferme, le lactosérum reste entre.</translation>
    </message>
    <message>
        <source>it lies only {contact_min:.0f} min in form and press.</source>
        <translation>il ne reste que {contact_min:.0f} min au moule et sous presse.</translation>
    </message>
    <message>
        <source>mill and salt at a lower pH (5.3-5.4)</source>
        <translation>broyez et salez à un pH plus bas (5,3-5,4)</translation>
    </message>
    <message>
        <source>nearly closed</source>
        <translation>presque soudé</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>press heavier towards the end, or longer and warmer</source>
        <translation>pressez plus fort vers la fin, ou plus longtemps et plus chaud</translation>
    </message>
    <message>
        <source>press longer: Cheddar 12-18 h, up to 24 h where it stays open</source>
        <translation>pressez plus longtemps : Cheddar 12-18 h, jusqu'à 24 h s'il reste ouvert</translation>
    </message>
    <message>
        <source>start light and raise the load by steps over an hour</source>
        <translation>commencez léger et montez la charge par paliers sur une heure</translation>
    </message>
    <message>
        <source>the curd comes into the press at {moisture_pct:.0f} % moisture; crumbs that dried out do not unite.</source>
        <translation>le caillé entre sous presse à {moisture_pct:.0f} % d'humidité ; des grains desséchés ne se soudent pas.</translation>
    </message>
    <message>
        <source>the curd is at pH {ph:.2f} when it is pressed; below about 5.0 it is short and does not flow.</source>
        <translation>le caillé est à pH {ph:.2f} au pressage ; sous environ 5,0 il est court et ne flue pas.</translation>
    </message>
    <message>
        <source>the curd is salted and still at pH {ph:.2f}; above about 5.6 salted curd does not flow.</source>
        <translation>le caillé est salé et encore à pH {ph:.2f} ; au-dessus d'environ 5,6 un caillé salé ne flue pas.</translation>
    </message>
    <message>
        <source>the curd lies at {temperature_c:.0f} °C when it is pressed; too cold, pieces do not fuse and no rind forms.</source>
        <translation>le caillé est à {temperature_c:.0f} °C au pressage ; trop froid, les grains ne se soudent pas et aucune croûte ne se forme.</translation>
    </message>
    <message>
        <source>the grains were worked apart before forming, so air lies between them.</source>
        <translation>les grains ont été séparés avant le moulage, il y a donc de l'air entre eux.</translation>
    </message>
    <message>
        <source>the highest pressure is {load_kpa:.0f} kPa, less than half of what such curd usually gets.</source>
        <translation>la plus forte pression est de {load_kpa:.0f} kPa, moins de la moitié de ce que reçoit d'habitude un tel caillé.</translation>
    </message>
    <message>
        <source>the salted curd is pressed at {temperature_c:.0f} °C; too warm, fat runs out and greasy faces do not join.</source>
        <translation>le caillé salé est pressé à {temperature_c:.0f} °C ; trop chaud, la graisse coule et les faces grasses ne se joignent pas.</translation>
    </message>
    <message>
        <source>warm forms and room, form sooner, keep the curd covered; salted curd wants 27-30 °C</source>
        <translation>chauffez moules et local, moulez plus tôt, gardez le caillé couvert ; un caillé salé veut 27-30 °C</translation>
    </message>
</context>
<context>
    <name>law</name>
    <message>
        <source>A factor against the reference temperature, rising as Arrhenius has it. It levels off smoothly when hot and fades out when too cold for curd to shrink.</source>
        <translation>Un facteur par rapport à la température de référence, qui monte selon Arrhenius. Il plafonne doucement à chaud et s'éteint quand il fait trop froid pour que le caillé se resserre.</translation>
    </message>
    <message>
        <source>A factor by the place of the curd: still or stirred under whey, as a drained bed, in moulds or in the press.</source>
        <translation>Un facteur selon l'endroit où est le caillé : au repos ou brassé sous sérum, en lit soutiré, en moules ou sous presse.</translation>
    </message>
    <message>
        <source>A factor of handling by pressure: with no load the curd drains under its own weight, and more load adds less and less. Moisture does not go in step with pressure.</source>
        <translation>Un facteur de travail selon la pression : sans charge le caillé s'égoutte sous son propre poids, et chaque charge de plus ajoute de moins en moins. L'humidité ne suit pas la pression en proportion.</translation>
    </message>
    <message>
        <source>A rate per minute for what is dissolved, sugar above all: small grain is much faster, by the square of its edge, until the film of whey around it is what holds it up.</source>
        <translation>Une vitesse par minute pour ce qui est dissous, le sucre surtout : un petit grain est bien plus rapide, selon le carré de son arête, jusqu'à ce que la pellicule de sérum qui l'entoure soit ce qui le retient.</translation>
    </message>
    <message>
        <source>A rate per minute: faster when warm, sour, cut small and stirred, slower the more fat there is for each part of casein and the hotter the milk was heated. Warmth and acid each level off.</source>
        <translation>Une vitesse par minute : plus grande dans un caillé chaud, acide, coupé fin et brassé, d'autant plus petite qu'il y a de matière grasse par part de caséine et que le lait a été chauffé. L'effet de la chaleur et celui de l'acidité plafonnent.</translation>
    </message>
    <message>
        <source>A share per minute, in step with the pressure: almost nothing in moulds without a load, none before.</source>
        <translation>Une part par minute, proportionnelle à la pression : presque rien en moules sans charge, rien avant.</translation>
    </message>
    <message>
        <source>A share per minute, on wet grain heated too fast: hardly any up to a certain rate of heating, then in step with what is beyond it.</source>
        <translation>Une part par minute, sur un grain humide chauffé trop vite : presque rien jusqu'à une certaine vitesse de chauffe, puis en proportion de ce qui la dépasse.</translation>
    </message>
    <message>
        <source>Clotting time against that at 32 °C. Below 15 and above 50 °C it stays at what it is there.</source>
        <translation>Temps de coagulation par rapport à celui à 32 °C. Au-dessous de 15 et au-dessus de 50 °C il reste ce qu'il est à cette limite.</translation>
    </message>
    <message>
        <source>Driven by what the surface meets in the brine beyond what the cheese holds, both as salt for each kilogram of water; it turns round where the brine is the weaker, and the cheese never passes the brine. A cheese moved to another brine goes on from what it holds.</source>
        <translation>Mené par ce que la surface rencontre dans la saumure en plus de ce que tient le fromage, l'un et l'autre en sel par kilogramme d'eau ; il s'inverse où la saumure est la plus faible, et le fromage ne dépasse jamais la saumure. Un fromage passé dans une autre saumure continue à partir de ce qu'il tient.</translation>
    </message>
    <message>
        <source>Firmness in pascals by the number of flocculation times since rennet, and by the casein of the milk. There is none before flocculation.</source>
        <translation>Fermeté en pascals selon le nombre de temps de floculation depuis l'emprésurage, et selon la caséine du lait. Il n'y en a pas avant la floculation.</translation>
    </message>
    <message>
        <source>Kilograms for each kilogram of water: the strength of the brine, levelling off where brine is strong.</source>
        <translation>Kilogrammes par kilogramme d'eau : la force de la saumure, qui plafonne où elle est forte.</translation>
    </message>
    <message>
        <source>Kilograms of water for each kilogram of casein and minute: the rate at which the curd gives off whey, times what it still holds above its end point. Skin and surface film keep a share back. It falls smoothly to nothing at the end point; curd that holds less already (salted, brined or dried) takes nothing back.</source>
        <translation>Kilogrammes d'eau par kilogramme de caséine et par minute : la vitesse à laquelle le caillé rend son sérum, fois ce qu'il tient encore au-dessus de son point final. La croûte et la peau du grain en retiennent une part. Elle tombe sans à-coup à zéro au point final ; un caillé qui en tient déjà moins (salé, saumuré ou séché) ne reprend rien.</translation>
    </message>
    <message>
        <source>Kilograms of water for each kilogram of casein: more once it has turned to acid curd, more while it is hot. Whey protein that heat has bound to the casein holds as much as casein does.</source>
        <translation>Kilogrammes d'eau par kilogramme de caséine : plus une fois devenu caillé acide, plus tant qu'il est chaud. Les protéines solubles que la chaleur a liées à la caséine retiennent autant d'eau qu'elle.</translation>
    </message>
    <message>
        <source>Minutes from rennet to the first flakes: a short fixed time, and one that goes with the inverse of the dose and changes with temperature, pH, calcium, the coagulant and the milk (its species, how long it was cold, how it was heated).</source>
        <translation>Minutes de l'emprésurage aux premiers flocons : un court temps fixe, et un temps qui va comme l'inverse de la dose et change avec la température, le pH, le calcium, le coagulant et le lait (son espèce, son temps au froid, son chauffage).</translation>
    </message>
    <message>
        <source>Square centimetres a day, 0.08 to 0.40: faster in moist cheese, faster when warm (28 kJ/mol).</source>
        <translation>Centimètres carrés par jour, 0,08 à 0,40 : plus vite dans un fromage humide, plus vite à la chaleur (28 kJ/mol).</translation>
    </message>
    <message>
        <source>The pH at which all that buffers (the casein, the salts of the serum, the lactic acid) holds just the acid there is. The acid is counted from the pH the milk had; there is only one such pH.</source>
        <translation>Le pH auquel tout ce qui tamponne (la caséine, les sels du sérum, l'acide lactique) tient juste l'acide présent. L'acide se compte à partir du pH qu'avait le lait ; il n'y a qu'un tel pH.</translation>
    </message>
    <message>
        <source>The part of the acid that is dissolved rather than held by the casein, in moles for each kilogram of milk.</source>
        <translation>La part de l'acide qui est dissoute plutôt que tenue par la caséine, en moles par kilogramme de lait.</translation>
    </message>
    <message>
        <source>The share of growth that is left at a salt in moisture: it falls with the square of the salt and is nothing at the most the culture bears. The form is our own.</source>
        <translation>La part de croissance qui reste à un sel sur humidité : elle baisse avec le carré du sel et s'annule au maximum que supporte la culture. La forme est de nous.</translation>
    </message>
    <message>
        <source>The share of its best growth a starter reaches at a pH: all of it at its best pH, nothing at its lowest and highest.</source>
        <translation>La part de sa meilleure croissance qu'un levain atteint à un pH : toute à son pH optimal, rien au minimal ni au maximal.</translation>
    </message>
    <message>
        <source>The share of its best growth a starter reaches at a temperature: all of it at its best temperature, nothing at its lowest and highest, falling off steeply above the best.</source>
        <translation>La part de sa meilleure croissance qu'un levain atteint à une température : toute à sa température optimale, rien à la minimale ni à la maximale, avec une chute raide au-dessus de l'optimum.</translation>
    </message>
    <message>
        <source>The share of the starter that dies in a minute: from the time in which nine of ten die at a temperature, and from the degrees that make that ten times faster.</source>
        <translation>La part du levain qui meurt en une minute : d'après le temps où neuf sur dix meurent à une température, et les degrés qui rendent cela dix fois plus rapide.</translation>
    </message>
    <message>
        <source>The share of the starter that works at once. It is set so that, at its best temperature, the acid comes as late as the culture's own delay.</source>
        <translation>La part du levain qui travaille aussitôt. Elle est réglée pour qu'à la température optimale l'acide vienne avec le retard propre à la culture.</translation>
    </message>
    <message>
        <source>dying of heat</source>
        <translation>mort par la chaleur</translation>
    </message>
    <message>
        <source>from acid to pH</source>
        <translation>de l'acide au pH</translation>
    </message>
    <message>
        <source>growth by pH (Rosso 1995)</source>
        <translation>croissance selon le pH (Rosso 1995)</translation>
    </message>
    <message>
        <source>growth by temperature (Rosso 1993)</source>
        <translation>croissance selon la température (Rosso 1993)</translation>
    </message>
    <message>
        <source>growth in salt</source>
        <translation>croissance dans le sel</translation>
    </message>
    <message>
        <source>how fast a surface film forms</source>
        <translation>vitesse à laquelle se forme la peau du grain</translation>
    </message>
    <message>
        <source>how fast curd and whey even out</source>
        <translation>vitesse à laquelle caillé et sérum s'équilibrent</translation>
    </message>
    <message>
        <source>how fast rennet curd gives off whey</source>
        <translation>vitesse à laquelle le caillé présure rend son sérum</translation>
    </message>
    <message>
        <source>how fast salt travels in cheese (Floury 2010)</source>
        <translation>vitesse du sel dans le fromage (Floury 2010)</translation>
    </message>
    <message>
        <source>how fast the rind closes</source>
        <translation>vitesse à laquelle la croûte se ferme</translation>
    </message>
    <message>
        <source>how firm the gel is (Scott Blair 1959)</source>
        <translation>fermeté du gel (Scott Blair 1959)</translation>
    </message>
    <message>
        <source>salt taken up in brine</source>
        <translation>sel pris en saumure</translation>
    </message>
    <message>
        <source>the acid that leaves with the whey</source>
        <translation>acide qui part avec le sérum</translation>
    </message>
    <message>
        <source>the salt the surface meets</source>
        <translation>sel que rencontre la surface</translation>
    </message>
    <message>
        <source>the starter awake when it goes in (Baranyi 1994)</source>
        <translation>levain éveillé à l'ensemencement (Baranyi 1994)</translation>
    </message>
    <message>
        <source>the water a rennet curd keeps in the end</source>
        <translation>eau que garde à la fin un caillé présure</translation>
    </message>
    <message>
        <source>the water that leaves the curd</source>
        <translation>eau qui quitte le caillé</translation>
    </message>
    <message>
        <source>time to flocculation (Foltmann 1959)</source>
        <translation>temps de floculation (Foltmann 1959)</translation>
    </message>
    <message>
        <source>what a load does</source>
        <translation>effet d'une charge</translation>
    </message>
    <message>
        <source>what handling does</source>
        <translation>effet du travail du caillé</translation>
    </message>
    <message>
        <source>what temperature does to clotting</source>
        <translation>effet de la température sur la coagulation</translation>
    </message>
    <message>
        <source>what temperature does to whey leaving</source>
        <translation>effet de la température sur la sortie du sérum</translation>
    </message>
</context>
<context>
    <name>level</name>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>arrêt</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>attention</translation>
    </message>
</context>
<context>
    <name>milk</name>
    <message>
        <source>buffalo's</source>
        <translation>bufflonne</translation>
    </message>
    <message>
        <source>cow's</source>
        <translation>vache</translation>
    </message>
    <message>
        <source>goat's</source>
        <translation>chèvre</translation>
    </message>
    <message>
        <source>sheep's</source>
        <translation>brebis</translation>
    </message>
</context>
<context>
    <name>note</name>
    <message>
        <source>10.5-11 cm across; the small Camembert (8-8.5 cm) needs 60 g.</source>
        <translation>10,5-11 cm de diamètre ; le petit Camembert (8-8,5 cm) demande 60 g.</translation>
    </message>
    <message>
        <source>100 g per square centimetre for 6 h or more.</source>
        <translation>100 g par centimètre carré pendant 6 h ou plus.</translation>
    </message>
    <message>
        <source>12 months published, read; FDM from memory.</source>
        <translation>12 mois publié, lu ; G/S de mémoire.</translation>
    </message>
    <message>
        <source>12-24 times its own weight, worked out here for a 15 cm mould.</source>
        <translation>12-24 fois son propre poids, calculé ici pour un moule de 15 cm.</translation>
    </message>
    <message>
        <source>12.5-15 cm across.</source>
        <translation>12,5-15 cm de diamètre.</translation>
    </message>
    <message>
        <source>12.8 mm here; 10-30 mm in Renner 1988. Not cooked.</source>
        <translation>12,8 mm ici ; 10-30 mm chez Renner 1988. Non cuit.</translation>
    </message>
    <message>
        <source>15 °C for 2-3 months (handbook); 12-13 °C at 85-90 % is common practice.</source>
        <translation>15 °C pendant 2-3 mois (manuel) ; 12-13 °C à 85-90 % est l'usage courant.</translation>
    </message>
    <message>
        <source>15-20 times its own weight, worked out here for a 15 cm wheel.</source>
        <translation>15-20 fois son propre poids, calculé ici pour une meule de 15 cm.</translation>
    </message>
    <message>
        <source>15-50 kg; few holes of pea size.</source>
        <translation>15-50 kg ; peu de trous, de la taille d'un pois.</translation>
    </message>
    <message>
        <source>150 days for the table, 240 for grating.</source>
        <translation>150 jours pour la table, 240 pour râper.</translation>
    </message>
    <message>
        <source>18-19 °C for 1-2 days, or ripened at 12-14 °C and set at 20-22 °C for 18-48 h.</source>
        <translation>18-19 °C pendant 1-2 jours, ou maturé à 12-14 °C et caillé à 20-22 °C pendant 18-48 h.</translation>
    </message>
    <message>
        <source>2 months at 10-25 °C, never under 6 weeks.</source>
        <translation>2 mois à 10-25 °C, jamais moins de 6 semaines.</translation>
    </message>
    <message>
        <source>2-3 mm (Renner), about 4 mm, wheat (museum at Stabio).</source>
        <translation>2-3 mm (Renner), environ 4 mm, blé (musée de Stabio).</translation>
    </message>
    <message>
        <source>28-32 °C and 45-75 min in strong and US makes.</source>
        <translation>28-32 °C et 45-75 min dans les fabrications fortes et américaines.</translation>
    </message>
    <message>
        <source>32 to 46 °C in 50 min; the US text has about 49 °C. Printed as one figure and widened here: setting 32 °C.</source>
        <translation>32 à 46 °C en 50 min ; le texte américain a environ 49 °C. Imprimé en un seul chiffre et élargi ici : caillage 32 °C.</translation>
    </message>
    <message>
        <source>4.6-4.9 is reached 8-12 h after the culture.</source>
        <translation>4,6-4,9 est atteint 8-12 h après le ferment.</translation>
    </message>
    <message>
        <source>5-6 in practice; the Guelph make is near 3.</source>
        <translation>5-6 en pratique ; la fabrication de Guelph est près de 3.</translation>
    </message>
    <message>
        <source>53-55 °C in 30-40 min, held 30-60 min; the US type is cooked at 52 °C. Printed as one figure and widened here: rennet to cut 30 min.</source>
        <translation>53-55 °C en 30-40 min, tenu 30-60 min ; le type américain est cuit à 52 °C. Imprimé en un seul chiffre et élargi ici : présure à décaillage 30 min.</translation>
    </message>
    <message>
        <source>6 weeks to 6 months; temperature from Codex, from memory (high).</source>
        <translation>6 semaines à 6 mois ; température du Codex, de mémoire (sûr).</translation>
    </message>
    <message>
        <source>6.4 mm here, 9.5 mm in the US text. Printed as one figure and widened here: rest 10 min.</source>
        <translation>6,4 mm ici, 9,5 mm dans le texte américain. Imprimé en un seul chiffre et élargi ici : repos 10 min.</translation>
    </message>
    <message>
        <source>60 g or more.</source>
        <translation>60 g ou plus.</translation>
    </message>
    <message>
        <source>A firmer Asiago than the fresh one.</source>
        <translation>Un Asiago plus ferme que le frais.</translation>
    </message>
    <message>
        <source>A in t = A + K/E (Holter 1932, Foltmann 1959)</source>
        <translation>A dans t = A + K/E (Holter 1932, Foltmann 1959)</translation>
    </message>
    <message>
        <source>About 32 °C in the US text; 36 °C in the handbook; 33.9-35.6 °C in Thom &amp; Fisk 1918. Printed as one figure and widened here: cut 9.5 mm.</source>
        <translation>Environ 32 °C dans le texte américain ; 36 °C dans le manuel ; 33,9-35,6 °C chez Thom &amp; Fisk 1918. Imprimé en un seul chiffre et élargi ici : grain 9,5 mm.</translation>
    </message>
    <message>
        <source>About 35.6 °C; Thom &amp; Fisk 1918 have 43-46 °C.</source>
        <translation>Environ 35,6 °C ; Thom &amp; Fisk 1918 ont 43-46 °C.</translation>
    </message>
    <message>
        <source>Also 11 % fat (likely of the cheese).</source>
        <translation>Aussi 11 % de matière grasse (sans doute du fromage).</translation>
    </message>
    <message>
        <source>Also NaCl 1.1-1.7 %.</source>
        <translation>Aussi NaCl 1,1-1,7 %.</translation>
    </message>
    <message>
        <source>Also NaCl at least 0.6 %; wheels of 32-45 kg.</source>
        <translation>Aussi NaCl au moins 0,6 % ; meules de 32-45 kg.</translation>
    </message>
    <message>
        <source>Also NaCl at most 2.3 %, pH 4.8-5.8, protein in dry matter at least 30 %; 60 days above 1.5 kg.</source>
        <translation>Aussi NaCl au plus 2,3 %, pH 4,8-5,8, protéines sur sec au moins 30 % ; 60 jours au-dessus de 1,5 kg.</translation>
    </message>
    <message>
        <source>Also fat of the cheese 20 to under 33 %.</source>
        <translation>Aussi matière grasse du fromage de 20 à moins de 33 %.</translation>
    </message>
    <message>
        <source>Also fat of the cheese at least 33 %.</source>
        <translation>Aussi matière grasse du fromage au moins 33 %.</translation>
    </message>
    <message>
        <source>Also fat of the cheese at least 4 %. Pasteurisation from memory (high).</source>
        <translation>Aussi matière grasse du fromage au moins 4 %. Pasteurisation de mémoire (sûr).</translation>
    </message>
    <message>
        <source>An older text; about 14 x 3.5 cm, 500 g.</source>
        <translation>Un texte plus ancien ; environ 14 x 3,5 cm, 500 g.</translation>
    </message>
    <message>
        <source>At 12 weeks.</source>
        <translation>À 12 semaines.</translation>
    </message>
    <message>
        <source>At 3-4 days; below 5.0 short and crumbly, above 5.3 corky or pasty.</source>
        <translation>À 3-4 jours ; sous 5,0 court et friable, au-dessus de 5,3 comme du liège ou pâteux.</translation>
    </message>
    <message>
        <source>At least 4 weeks in a warm room at 20 °C or more.</source>
        <translation>Au moins 4 semaines en cave chaude à 20 °C ou plus.</translation>
    </message>
    <message>
        <source>At least 52 °C (French Gruyere), about 57 °C (Swiss).</source>
        <translation>Au moins 52 °C (Gruyère français), environ 57 °C (suisse).</translation>
    </message>
    <message>
        <source>At least 53 °C for 30 min or more; 100 g per square centimetre for 6 h or more.</source>
        <translation>Au moins 53 °C pendant 30 min ou plus ; 100 g par centimètre carré pendant 6 h ou plus.</translation>
    </message>
    <message>
        <source>Blue mould throughout.</source>
        <translation>Moisissure bleue partout.</translation>
    </message>
    <message>
        <source>Camembert make; not cooked.</source>
        <translation>Fabrication de Camembert ; non cuit.</translation>
    </message>
    <message>
        <source>Codex also asks for propionic acid of at least 150 mg and calcium of at least 800 mg in 100 g, from memory (high); the program works out neither.</source>
        <translation>Le Codex demande aussi de l'acide propionique d'au moins 150 mg et du calcium d'au moins 800 mg dans 100 g, de mémoire (sûr) ; le programme ne calcule ni l'un ni l'autre.</translation>
    </message>
    <message>
        <source>Columns of 12.7 mm, not cross-cut.</source>
        <translation>Colonnes de 12,7 mm, sans coupe transversale.</translation>
    </message>
    <message>
        <source>Cooked at 50 °C or more; eyes cherry to walnut.</source>
        <translation>Cuit à 50 °C ou plus ; ouvertures de la cerise à la noix.</translation>
    </message>
    <message>
        <source>Cooking at about 52 °C from memory (high).</source>
        <translation>Cuisson vers 52 °C de mémoire (sûr).</translation>
    </message>
    <message>
        <source>Curd no larger than wheat kernels; 46.1-51.7 °C. Parmigiano is taken to 55 °C.</source>
        <translation>Grains pas plus gros que le blé ; 46,1-51,7 °C. Le Parmigiano est mené à 55 °C.</translation>
    </message>
    <message>
        <source>Day 1 measured 4.9-5.1 (Lee et al. 2010, abstract).</source>
        <translation>Jour 1 mesuré 4,9-5,1 (Lee et al. 2010, résumé).</translation>
    </message>
    <message>
        <source>Drained to the level of the curd, water at 15 °C brings curd and whey to 26 °C. Printed as one figure and widened here: ripening 31 °C, cut 9.5 mm, rest 15 min, heating to 39 °C, water 15 °C.</source>
        <translation>Tiré au niveau du caillé, l'eau à 15 °C amène caillé et lactosérum à 26 °C. Imprimé en un seul chiffre et élargi ici : maturation 31 °C, grain 9,5 mm, repos 15 min, chauffage à 39 °C, eau 15 °C.</translation>
    </message>
    <message>
        <source>Edam of 1.5-3 kg: 3 days in 20 % brine.</source>
        <translation>Edam de 1,5-3 kg : 3 jours en saumure à 20 %.</translation>
    </message>
    <message>
        <source>Factory practice; a farm press of 10-30 kPa makes good cheese too.</source>
        <translation>Usage d'usine ; une presse de ferme de 10-30 kPa fait aussi de bon fromage.</translation>
    </message>
    <message>
        <source>Fat and moisture there are Canadian legal limits, so a ratio leads to the least fat allowed, not to the best.</source>
        <translation>Matière grasse et humidité y sont des limites légales canadiennes : un rapport mène donc au minimum de gras permis, non au meilleur.</translation>
    </message>
    <message>
        <source>Flow sheet for Cheddar, Colby and Jack (ripened 30 min; the Guelph Colby an hour); the Jack is washed at 29 °C for 5 min. Printed as one figure and widened here: cut 9.5 mm.</source>
        <translation>Schéma pour Cheddar, Colby et Jack (maturé 30 min ; le Colby de Guelph une heure) ; le Jack est lavé à 29 °C pendant 5 min. Imprimé en un seul chiffre et élargi ici : grain 9,5 mm.</translation>
    </message>
    <message>
        <source>For cheese sold as Feta see the style Feta.</source>
        <translation>Pour un fromage vendu comme Feta, voir le style Feta.</translation>
    </message>
    <message>
        <source>Fresh off the press at least 56 % dry matter; wheels of 35-45 kg.</source>
        <translation>Sortant de presse au moins 56 % d'extrait sec ; meules de 35-45 kg.</translation>
    </message>
    <message>
        <source>Guelph prints 36 % moisture, drier than the US and the protected cheese usually are.</source>
        <translation>Guelph imprime 36 % d'humidité, plus sec que ne le sont d'habitude l'américain et le protégé.</translation>
    </message>
    <message>
        <source>Half-inch columns.</source>
        <translation>Colonnes d'un demi-pouce.</translation>
    </message>
    <message>
        <source>Half-old 6 months, old 12 months.</source>
        <translation>Demi-vieux 6 mois, vieux 12 mois.</translation>
    </message>
    <message>
        <source>Hard 49-56, semi-hard 54-63: the bands overlap on purpose.</source>
        <translation>Dur 49-56, demi-dur 54-63 : les bandes se recouvrent exprès.</translation>
    </message>
    <message>
        <source>Hard by MFFB, full fat by FDM.</source>
        <translation>Dur par l'HFD, gras par le G/S.</translation>
    </message>
    <message>
        <source>Hazelnut.</source>
        <translation>Noisette.</translation>
    </message>
    <message>
        <source>Heating starts 5 min after cutting. Printed as one figure and widened here: cut 9.5 mm, rest 5 min.</source>
        <translation>Le chauffage commence 5 min après le décaillage. Imprimé en un seul chiffre et élargi ici : grain 9,5 mm, repos 5 min.</translation>
    </message>
    <message>
        <source>Hemp seed.</source>
        <translation>Graine de chanvre.</translation>
    </message>
    <message>
        <source>Humidity common practice.</source>
        <translation>Humidité : usage courant.</translation>
    </message>
    <message>
        <source>Humidity from memory (medium).</source>
        <translation>Humidité de mémoire (moyen).</translation>
    </message>
    <message>
        <source>Humidity published; temperature and days common practice.</source>
        <translation>Humidité publiée ; température et jours d'usage courant.</translation>
    </message>
    <message>
        <source>Humidity: Guelph.</source>
        <translation>Humidité : Guelph.</translation>
    </message>
    <message>
        <source>Milk from memory (high).</source>
        <translation>Lait de mémoire (sûr).</translation>
    </message>
    <message>
        <source>Moisture at 12 days after the make.</source>
        <translation>Humidité 12 jours après la fabrication.</translation>
    </message>
    <message>
        <source>No limit on moisture. Raw-milk rule from memory (high).</source>
        <translation>Pas de limite d'humidité. Règle du lait cru de mémoire (sûr).</translation>
    </message>
    <message>
        <source>No more than 1 °C per 5 min at first; 39 °C, at most 40. Printed as one figure and widened here: cut 9.5 mm.</source>
        <translation>Pas plus de 1 °C en 5 min au début ; 39 °C, au plus 40. Imprimé en un seul chiffre et élargi ici : grain 9,5 mm.</translation>
    </message>
    <message>
        <source>No standard of its own; the generic class.</source>
        <translation>Pas de norme à lui ; la classe générale.</translation>
    </message>
    <message>
        <source>Not heated, or 35.6-36.7 °C.</source>
        <translation>Non chauffé, ou 35,6-36,7 °C.</translation>
    </message>
    <message>
        <source>One third of the whey off; 14 then 28 psi. Brine printed as 20 %. Printed as one figure and widened here: water 60 °C.</source>
        <translation>Un tiers du lactosérum tiré ; 14 puis 28 psi. Saumure imprimée 20 %. Imprimé en un seul chiffre et élargi ici : eau 60 °C.</translation>
    </message>
    <message>
        <source>Out of the press after Chandan &amp; Kilara; eyes fail below 5.0 or above 5.4 (Hutkins).</source>
        <translation>Hors de la presse d'après Chandan &amp; Kilara ; les ouvertures manquent sous 5,0 ou au-dessus de 5,4 (Hutkins).</translation>
    </message>
    <message>
        <source>Phosphatase at most 4 µg phenol, from memory (medium). Raw-milk rule from memory (high).</source>
        <translation>Phosphatase au plus 4 µg de phénol, de mémoire (moyen). Règle du lait cru de mémoire (sûr).</translation>
    </message>
    <message>
        <source>Port du Salut: 37.8-40.6 °C; wheat grain when hooped.</source>
        <translation>Port du Salut : 37,8-40,6 °C ; grain de blé au moulage.</translation>
    </message>
    <message>
        <source>Printed as FDM 45-50.</source>
        <translation>Imprimé G/S 45-50.</translation>
    </message>
    <message>
        <source>Printed as one figure and widened here: rest 10 min.</source>
        <translation>Imprimé en un seul chiffre et élargi ici : repos 10 min.</translation>
    </message>
    <message>
        <source>Printed as one figure and widened here: ripening 37 °C, setting 37 °C.</source>
        <translation>Imprimé en un seul chiffre et élargi ici : maturation 37 °C, caillage 37 °C.</translation>
    </message>
    <message>
        <source>Raw-milk rule (60 days at 1.7 °C or warmer) from memory (high).</source>
        <translation>Règle du lait cru (60 jours à 1,7 °C ou plus) de mémoire (sûr).</translation>
    </message>
    <message>
        <source>Raw-milk rule from memory (high).</source>
        <translation>Règle du lait cru de mémoire (sûr).</translation>
    </message>
    <message>
        <source>Reference FDM 40-50.</source>
        <translation>G/S de référence 40-50.</translation>
    </message>
    <message>
        <source>Reference FDM 40-50. From 1 week at 10-17 °C.</source>
        <translation>G/S de référence 40-50. À partir d'une semaine à 10-17 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 40-50. From 10 days at 10-16 °C.</source>
        <translation>G/S de référence 40-50. À partir de 10 jours à 10-16 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 40-50; from 3 weeks at 10-18 °C.</source>
        <translation>G/S de référence 40-50 ; à partir de 3 semaines à 10-18 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 45-50. From 1 month at 10-20 °C; smoked/plain variants.</source>
        <translation>G/S de référence 45-50. À partir d'un mois à 10-20 °C ; variantes fumée et nature.</translation>
    </message>
    <message>
        <source>Reference FDM 45-55.</source>
        <translation>G/S de référence 45-55.</translation>
    </message>
    <message>
        <source>Reference FDM 45-55. From 10 days at 10-16 °C.</source>
        <translation>G/S de référence 45-55. À partir de 10 jours à 10-16 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 45-55. From 3 weeks at 10-16 °C.</source>
        <translation>G/S de référence 45-55. À partir de 3 semaines à 10-16 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 45-55. From 3 weeks at 12-20 °C.</source>
        <translation>G/S de référence 45-55. À partir de 3 semaines à 12-20 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 45-55. From 3 weeks at 8-17 °C.</source>
        <translation>G/S de référence 45-55. À partir de 3 semaines à 8-17 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 45-55. Ripening line (from 10 days at 10-16 °C) published, read.</source>
        <translation>G/S de référence 45-55. Ligne d'affinage (à partir de 10 jours à 10-16 °C) publiée, lue.</translation>
    </message>
    <message>
        <source>Reference FDM 48-55; from 3 weeks at 10-17 °C.</source>
        <translation>G/S de référence 48-55 ; à partir de 3 semaines à 10-17 °C.</translation>
    </message>
    <message>
        <source>Reference FDM 48-60. Ripening line (from 5 weeks at 7-15 °C) published, read.</source>
        <translation>G/S de référence 48-60. Ligne d'affinage (à partir de 5 semaines à 7-15 °C) publiée, lue.</translation>
    </message>
    <message>
        <source>Reference FDM 60-70.</source>
        <translation>G/S de référence 60-70.</translation>
    </message>
    <message>
        <source>Revoked by the end of 2018.</source>
        <translation>Révoqué avant la fin de 2018.</translation>
    </message>
    <message>
        <source>Revoked by the end of 2018; White Stilton 46 % moisture.</source>
        <translation>Révoqué avant la fin de 2018 ; Stilton blanc 46 % d'humidité.</translation>
    </message>
    <message>
        <source>Ripened and kept in brine until sale.</source>
        <translation>Affiné et gardé en saumure jusqu'à la vente.</translation>
    </message>
    <message>
        <source>Salers, the same family, raw and uncooked: at 6 h at most 6.3.</source>
        <translation>Salers, même famille, cru et non cuit : à 6 h au plus 6,3.</translation>
    </message>
    <message>
        <source>Salt printed as 2 kg per 1000 kg milk at a yield of 10-11 %.</source>
        <translation>Sel imprimé 2 kg pour 1000 kg de lait à un rendement de 10-11 %.</translation>
    </message>
    <message>
        <source>Sheep at least 70 %, goat at most 30 %. 55 % is common practice; the registered text has 56, from memory (high).</source>
        <translation>Brebis au moins 70 %, chèvre au plus 30 %. 55 % est l'usage courant ; le texte déposé a 56, de mémoire (sûr).</translation>
    </message>
    <message>
        <source>Short set, 5 % starter; +0.5 °C per 5 min at first.</source>
        <translation>Caillage court, 5 % de ferment ; +0,5 °C en 5 min au début.</translation>
    </message>
    <message>
        <source>The Brie of the US food table lies at 67.0 % MNFS, on the edge of soft.</source>
        <translation>Le Brie de la table américaine est à 67,0 % HFD, au bord du mou.</translation>
    </message>
    <message>
        <source>The US limit on moisture (39 %) and Codex at FDM 48-60 (dry matter 61 %) are the same line.</source>
        <translation>La limite américaine d'humidité (39 %) et le Codex à G/S 48-60 (extrait sec 61 %) sont la même ligne.</translation>
    </message>
    <message>
        <source>The US standard has no raw-milk route.</source>
        <translation>La norme américaine n'a pas de voie au lait cru.</translation>
    </message>
    <message>
        <source>The colder the wash water, the more moisture stays.</source>
        <translation>Plus l'eau de lavage est froide, plus il reste d'humidité.</translation>
    </message>
    <message>
        <source>The printed FDM (45.2) recomputes to 43.3.</source>
        <translation>Le G/S imprimé (45,2) se recalcule à 43,3.</translation>
    </message>
    <message>
        <source>The sodium printed (70 mg) is suspect and left out.</source>
        <translation>Le sodium imprimé (70 mg) est douteux et laissé de côté.</translation>
    </message>
    <message>
        <source>Wheat grain to cherry stone.</source>
        <translation>Du grain de blé au noyau de cerise.</translation>
    </message>
    <message>
        <source>Wheat kernels; about 30 min of stirring before cooking.</source>
        <translation>Grains de blé ; environ 30 min de brassage avant la cuisson.</translation>
    </message>
    <message>
        <source>Wheels of 4.5-7 kg.</source>
        <translation>Meules de 4,5-7 kg.</translation>
    </message>
    <message>
        <source>Whey at first whey off 6.40-6.45 (Guelph) or 6.4-6.5 (Chandan &amp; Kilara).</source>
        <translation>Lactosérum au premier soutirage 6,40-6,45 (Guelph) ou 6,4-6,5 (Chandan &amp; Kilara).</translation>
    </message>
    <message>
        <source>With pH 4.85-5.20 at 14 days, from memory (medium).</source>
        <translation>Avec pH 4,85-5,20 à 14 jours, de mémoire (moyen).</translation>
    </message>
    <message>
        <source>With pH 4.95-5.10 at 14 days, from memory (medium).</source>
        <translation>Avec pH 4,95-5,10 à 14 jours, de mémoire (moyen).</translation>
    </message>
    <message>
        <source>Wording quoted at second hand; age condition from memory (high).</source>
        <translation>Texte cité de seconde main ; condition d'âge de mémoire (sûr).</translation>
    </message>
    <message>
        <source>at 26 g casein per kg</source>
        <translation>à 26 g de caséine par kg</translation>
    </message>
    <message>
        <source>at 32 °C, pH 6.55, cow milk without added calcium</source>
        <translation>à 32 °C, pH 6,55, lait de vache sans calcium ajouté</translation>
    </message>
    <message>
        <source>pH 4.5 printed for the cheese.</source>
        <translation>pH 4,5 imprimé pour le fromage.</translation>
    </message>
    <message>
        <source>pH 4.6 printed for the cheese.</source>
        <translation>pH 4,6 imprimé pour le fromage.</translation>
    </message>
    <message>
        <source>pH 5.4 printed for the cheese.</source>
        <translation>pH 5,4 imprimé pour le fromage.</translation>
    </message>
    <message>
        <source>pH 5.8 printed for the rennet cheese.</source>
        <translation>pH 5,8 imprimé pour le fromage à la présure.</translation>
    </message>
    <message>
        <source>pH 5.9 printed for the cheese.</source>
        <translation>pH 5,9 imprimé pour le fromage.</translation>
    </message>
</context>
<context>
    <name>quantity</name>
    <message>
        <source>24 h after the starter</source>
        <translation>24 h après le ferment</translation>
    </message>
    <message>
        <source>6 h after the starter</source>
        <translation>6 h après le ferment</translation>
    </message>
    <message>
        <source>Acidity of milk or curd</source>
        <translation>Acidité du lait ou du caillé</translation>
    </message>
    <message>
        <source>Acidity of the whey when first drawn</source>
        <translation>Acidité du lactosérum au premier soutirage</translation>
    </message>
    <message>
        <source>Acidity of whey</source>
        <translation>Acidité du lactosérum</translation>
    </message>
    <message>
        <source>Ash</source>
        <translation>Cendres</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcium</translation>
    </message>
    <message>
        <source>Casein kept</source>
        <translation>Caséine retenue</translation>
    </message>
    <message>
        <source>Cheese</source>
        <translation>Fromage</translation>
    </message>
    <message>
        <source>Curd</source>
        <translation>Caillé</translation>
    </message>
    <message>
        <source>Curd moisture</source>
        <translation>Humidité du caillé</translation>
    </message>
    <message>
        <source>Curd moisture at draining</source>
        <translation>Humidité du caillé au soutirage</translation>
    </message>
    <message>
        <source>Cut after coagulant</source>
        <translation>Décaillage après coagulant</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Extrait sec</translation>
    </message>
    <message>
        <source>Dry matter of one cheese</source>
        <translation>Extrait sec d'un fromage</translation>
    </message>
    <message>
        <source>End of the make</source>
        <translation>Fin de la fabrication</translation>
    </message>
    <message>
        <source>Fat</source>
        <translation>Matière grasse</translation>
    </message>
    <message>
        <source>Fat in dry matter (FDM)</source>
        <translation>Gras sur sec (G/S)</translation>
    </message>
    <message>
        <source>Fat kept</source>
        <translation>Matière grasse retenue</translation>
    </message>
    <message>
        <source>Firmness of the gel</source>
        <translation>Fermeté du gel</translation>
    </message>
    <message>
        <source>Flocculation after coagulant</source>
        <translation>Floculation après coagulant</translation>
    </message>
    <message>
        <source>Galactose</source>
        <translation>Galactose</translation>
    </message>
    <message>
        <source>Highest pressure on the cheese</source>
        <translation>Plus forte pression sur le fromage</translation>
    </message>
    <message>
        <source>Knit of the curd</source>
        <translation>Soudure du caillé</translation>
    </message>
    <message>
        <source>Lactate</source>
        <translation>Lactate</translation>
    </message>
    <message>
        <source>Lactose</source>
        <translation>Lactose</translation>
    </message>
    <message>
        <source>Mesophilic starter</source>
        <translation>Ferment mésophile</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Moisture in non-fat substance (MNFS)</source>
        <translation>Humidité du fromage dégraissé (HFD)</translation>
    </message>
    <message>
        <source>Pressure on the cheese</source>
        <translation>Pression sur le fromage</translation>
    </message>
    <message>
        <source>Protein</source>
        <translation>Protéines</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Salt in dry matter</source>
        <translation>Sel sur sec</translation>
    </message>
    <message>
        <source>Salt in moisture (S/M)</source>
        <translation>Sel sur humidité (S/H)</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Thermophilic cocci</source>
        <translation>Coques thermophiles</translation>
    </message>
    <message>
        <source>Thermophilic rods</source>
        <translation>Bâtonnets thermophiles</translation>
    </message>
    <message>
        <source>Water per casein</source>
        <translation>Eau par caséine</translation>
    </message>
    <message>
        <source>Weight loss</source>
        <translation>Perte de poids</translation>
    </message>
    <message>
        <source>Whey run off</source>
        <translation>Lactosérum écoulé</translation>
    </message>
    <message>
        <source>Whey still in the vat</source>
        <translation>Lactosérum encore en cuve</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>age</source>
        <translation>âge</translation>
    </message>
    <message>
        <source>aroma culture</source>
        <translation>ferment aromatique</translation>
    </message>
    <message>
        <source>at milling</source>
        <translation>au broyage</translation>
    </message>
    <message>
        <source>at rennet</source>
        <translation>à l'emprésurage</translation>
    </message>
    <message>
        <source>at salting</source>
        <translation>au salage</translation>
    </message>
    <message>
        <source>at stretching</source>
        <translation>au filage</translation>
    </message>
    <message>
        <source>at the cut</source>
        <translation>au décaillage</translation>
    </message>
    <message>
        <source>at the end of cooking</source>
        <translation>à la fin du chauffage</translation>
    </message>
    <message>
        <source>brine strength</source>
        <translation>force de la saumure</translation>
    </message>
    <message>
        <source>brine temperature</source>
        <translation>température de la saumure</translation>
    </message>
    <message>
        <source>calcium</source>
        <translation>calcium</translation>
    </message>
    <message>
        <source>cut at multiple of flocculation</source>
        <translation>décaillage au multiple de floculation</translation>
    </message>
    <message>
        <source>cut size</source>
        <translation>taille du grain</translation>
    </message>
    <message>
        <source>cut to whey off</source>
        <translation>du décaillage au soutirage</translation>
    </message>
    <message>
        <source>dry salt</source>
        <translation>sel sec</translation>
    </message>
    <message>
        <source>eyes wanted</source>
        <translation>ouvertures voulues</translation>
    </message>
    <message>
        <source>fat in dry matter</source>
        <translation>gras sur sec</translation>
    </message>
    <message>
        <source>flocculation time</source>
        <translation>temps de floculation</translation>
    </message>
    <message>
        <source>hanging in cloth</source>
        <translation>suspension en toile</translation>
    </message>
    <message>
        <source>heating rate</source>
        <translation>vitesse de chauffe</translation>
    </message>
    <message>
        <source>highest pressure</source>
        <translation>plus forte pression</translation>
    </message>
    <message>
        <source>highest temperature of the curd</source>
        <translation>plus haute température du caillé</translation>
    </message>
    <message>
        <source>into the brine</source>
        <translation>à l'entrée en saumure</translation>
    </message>
    <message>
        <source>knit</source>
        <translation>soudure</translation>
    </message>
    <message>
        <source>moisture in non-fat substance</source>
        <translation>humidité du fromage dégraissé</translation>
    </message>
    <message>
        <source>moisture in non-fat substance against the style</source>
        <translation>humidité du fromage dégraissé par rapport au style</translation>
    </message>
    <message>
        <source>out of the press</source>
        <translation>à la sortie de presse</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH 6 h after the starter</source>
        <translation>pH 6 h après le ferment</translation>
    </message>
    <message>
        <source>pH at 24 h</source>
        <translation>pH à 24 h</translation>
    </message>
    <message>
        <source>pH at 6 h</source>
        <translation>pH à 6 h</translation>
    </message>
    <message>
        <source>pH at cutting</source>
        <translation>pH au décaillage</translation>
    </message>
    <message>
        <source>pH at draining</source>
        <translation>pH au soutirage</translation>
    </message>
    <message>
        <source>pH at milling</source>
        <translation>pH au broyage</translation>
    </message>
    <message>
        <source>pH at milling or salting</source>
        <translation>pH au broyage ou au salage</translation>
    </message>
    <message>
        <source>pH at moulding</source>
        <translation>pH au moulage</translation>
    </message>
    <message>
        <source>pH at rennet</source>
        <translation>pH à l'emprésurage</translation>
    </message>
    <message>
        <source>pH at salting</source>
        <translation>pH au salage</translation>
    </message>
    <message>
        <source>pH at setting</source>
        <translation>pH au caillage</translation>
    </message>
    <message>
        <source>pH at stretching</source>
        <translation>pH au filage</translation>
    </message>
    <message>
        <source>pH at the end of the make</source>
        <translation>pH à la fin de la fabrication</translation>
    </message>
    <message>
        <source>pH into the brine</source>
        <translation>pH à l'entrée en saumure</translation>
    </message>
    <message>
        <source>pH of milk or curd</source>
        <translation>pH du lait ou du caillé</translation>
    </message>
    <message>
        <source>pH of whey</source>
        <translation>pH du lactosérum</translation>
    </message>
    <message>
        <source>pH out of the press</source>
        <translation>pH à la sortie de presse</translation>
    </message>
    <message>
        <source>pH outside its window by</source>
        <translation>pH hors de sa plage de</translation>
    </message>
    <message>
        <source>pH when ripe</source>
        <translation>pH à maturité</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>pressage</translation>
    </message>
    <message>
        <source>raw milk</source>
        <translation>lait cru</translation>
    </message>
    <message>
        <source>rennet to cut</source>
        <translation>de la présure au décaillage</translation>
    </message>
    <message>
        <source>rest after cutting</source>
        <translation>repos après décaillage</translation>
    </message>
    <message>
        <source>ripening temperature</source>
        <translation>température de maturation</translation>
    </message>
    <message>
        <source>ripening time before rennet</source>
        <translation>maturation avant présure</translation>
    </message>
    <message>
        <source>risk of gas</source>
        <translation>risque de gaz</translation>
    </message>
    <message>
        <source>room humidity</source>
        <translation>humidité de la cave</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>température de la cave</translation>
    </message>
    <message>
        <source>salt in moisture</source>
        <translation>sel sur humidité</translation>
    </message>
    <message>
        <source>salt in moisture outside its window by</source>
        <translation>sel sur humidité hors de sa plage de</translation>
    </message>
    <message>
        <source>scalding</source>
        <translation>échaudage</translation>
    </message>
    <message>
        <source>setting temperature</source>
        <translation>température de caillage</translation>
    </message>
    <message>
        <source>stacking</source>
        <translation>cheddarisation</translation>
    </message>
    <message>
        <source>store</source>
        <translation>cave</translation>
    </message>
    <message>
        <source>stretching water</source>
        <translation>eau de filage</translation>
    </message>
    <message>
        <source>time in brine</source>
        <translation>temps en saumure</translation>
    </message>
    <message>
        <source>vat held for slow acid</source>
        <translation>cuve bloquée pour acide lent</translation>
    </message>
    <message>
        <source>wash water</source>
        <translation>eau de lavage</translation>
    </message>
    <message>
        <source>wash water temperature</source>
        <translation>température de l'eau de lavage</translation>
    </message>
    <message>
        <source>when the forms are filled</source>
        <translation>au remplissage des moules</translation>
    </message>
    <message>
        <source>when the whey comes off</source>
        <translation>au soutirage du lactosérum</translation>
    </message>
    <message>
        <source>whey drawn before washing</source>
        <translation>lactosérum tiré avant lavage</translation>
    </message>
    <message>
        <source>whey still running</source>
        <translation>lactosérum coulant encore</translation>
    </message>
</context>
<context>
    <name>rule</name>
    <message>
        <source>a deeper bed and one outlet take longer to run dry</source>
        <translation>un gâteau plus épais et une seule sortie s'égouttent plus lentement</translation>
    </message>
    <message>
        <source>a larger bag drains slower</source>
        <translation>une plus grande toile s'égoutte plus lentement</translation>
    </message>
    <message>
        <source>a larger cheese cools and drains slower; go by the pH out of the press</source>
        <translation>un fromage plus grand refroidit et s'égoutte plus lentement ; fiez-vous au pH de sortie de presse</translation>
    </message>
    <message>
        <source>a larger cheese cools slower, by thickness squared</source>
        <translation>un fromage plus grand refroidit plus lentement, selon le carré de l'épaisseur</translation>
    </message>
    <message>
        <source>a multiple</source>
        <translation>un multiple</translation>
    </message>
    <message>
        <source>a pH</source>
        <translation>un pH</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>une part</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>une température</translation>
    </message>
    <message>
        <source>by area</source>
        <translation>selon la surface</translation>
    </message>
    <message>
        <source>by milk</source>
        <translation>selon le lait</translation>
    </message>
    <message>
        <source>by the vat's power</source>
        <translation>selon la puissance de la cuve</translation>
    </message>
    <message>
        <source>by thickness squared</source>
        <translation>selon le carré de l'épaisseur</translation>
    </message>
    <message>
        <source>does not scale</source>
        <translation>ne change pas d'échelle</translation>
    </message>
    <message>
        <source>go by the dry face</source>
        <translation>fiez-vous à la face sèche</translation>
    </message>
    <message>
        <source>larger cheeses dry slower and are ready later</source>
        <translation>des fromages plus grands sèchent plus lentement et sont prêts plus tard</translation>
    </message>
    <message>
        <source>larger pieces heat through slower, by thickness squared</source>
        <translation>de plus gros morceaux chauffent à cœur plus lentement, selon le carré de l'épaisseur</translation>
    </message>
    <message>
        <source>more milk or more forms take longer by hand</source>
        <translation>plus de lait ou de moules prennent plus de temps à la main</translation>
    </message>
    <message>
        <source>salt reaches the middle by thickness squared</source>
        <translation>le sel atteint le cœur selon le carré de l'épaisseur</translation>
    </message>
    <message>
        <source>size of the cut; it sets how fast whey leaves</source>
        <translation>taille du grain ; elle règle la vitesse d'égouttage</translation>
    </message>
    <message>
        <source>the way it is handled</source>
        <translation>la façon de le travailler</translation>
    </message>
    <message>
        <source>to be checked</source>
        <translation>à vérifier</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>inchangé</translation>
    </message>
    <message>
        <source>what happens in each litre takes as long</source>
        <translation>ce qui se passe dans chaque litre dure autant</translation>
    </message>
</context>
<context>
    <name>rules</name>
    <message>
        <source>Allgaeuer Bergkaese</source>
        <translation>Allgäuer Bergkäse</translation>
    </message>
    <message>
        <source>Allgaeuer Emmentaler</source>
        <translation>Allgäuer Emmentaler</translation>
    </message>
    <message>
        <source>Brie de Meaux</source>
        <translation>Brie de Meaux</translation>
    </message>
    <message>
        <source>California</source>
        <translation>Californie</translation>
    </message>
    <message>
        <source>Camembert de Normandie</source>
        <translation>Camembert de Normandie</translation>
    </message>
    <message>
        <source>Codex</source>
        <translation>Codex</translation>
    </message>
    <message>
        <source>Codex, semi-hard cheese in brine</source>
        <translation>Codex, fromage demi-dur en saumure</translation>
    </message>
    <message>
        <source>Codex, soft cheese in brine</source>
        <translation>Codex, fromage à pâte molle en saumure</translation>
    </message>
    <message>
        <source>Comte</source>
        <translation>Comté</translation>
    </message>
    <message>
        <source>Edam Holland</source>
        <translation>Edam Holland</translation>
    </message>
    <message>
        <source>Feta</source>
        <translation>Feta</translation>
    </message>
    <message>
        <source>First grade</source>
        <translation>Première qualité</translation>
    </message>
    <message>
        <source>France</source>
        <translation>France</translation>
    </message>
    <message>
        <source>France, Cantal</source>
        <translation>France, Cantal</translation>
    </message>
    <message>
        <source>France, Reblochon</source>
        <translation>France, Reblochon</translation>
    </message>
    <message>
        <source>General class: extra hard</source>
        <translation>Classe générale : extra-dur</translation>
    </message>
    <message>
        <source>General class: firm</source>
        <translation>Classe générale : ferme</translation>
    </message>
    <message>
        <source>General class: firm to soft</source>
        <translation>Classe générale : ferme à mou</translation>
    </message>
    <message>
        <source>General class: hard</source>
        <translation>Classe générale : dur</translation>
    </message>
    <message>
        <source>General class: hard to firm</source>
        <translation>Classe générale : dur à ferme</translation>
    </message>
    <message>
        <source>General class: soft</source>
        <translation>Classe générale : mou</translation>
    </message>
    <message>
        <source>Gorgonzola</source>
        <translation>Gorgonzola</translation>
    </message>
    <message>
        <source>Gouda Holland</source>
        <translation>Gouda Holland</translation>
    </message>
    <message>
        <source>Gouda and related</source>
        <translation>Gouda et apparentés</translation>
    </message>
    <message>
        <source>Grana Padano</source>
        <translation>Grana Padano</translation>
    </message>
    <message>
        <source>Gruyere AOP</source>
        <translation>Gruyère AOP</translation>
    </message>
    <message>
        <source>Manchego</source>
        <translation>Manchego</translation>
    </message>
    <message>
        <source>Mozzarella di Bufala Campana</source>
        <translation>Mozzarella di Bufala Campana</translation>
    </message>
    <message>
        <source>Munster</source>
        <translation>Munster</translation>
    </message>
    <message>
        <source>Parmigiano Reggiano</source>
        <translation>Parmigiano Reggiano</translation>
    </message>
    <message>
        <source>Pecorino Romano</source>
        <translation>Pecorino Romano</translation>
    </message>
    <message>
        <source>Pecorino Sardo dolce</source>
        <translation>Pecorino Sardo dolce</translation>
    </message>
    <message>
        <source>Pecorino Sardo maturo</source>
        <translation>Pecorino Sardo maturo</translation>
    </message>
    <message>
        <source>Roquefort</source>
        <translation>Roquefort</translation>
    </message>
    <message>
        <source>Second grade</source>
        <translation>Deuxième qualité</translation>
    </message>
    <message>
        <source>Stilton</source>
        <translation>Stilton</translation>
    </message>
    <message>
        <source>Taleggio</source>
        <translation>Taleggio</translation>
    </message>
    <message>
        <source>United Kingdom, reserved description</source>
        <translation>Royaume-Uni, dénomination réservée</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>États-Unis</translation>
    </message>
    <message>
        <source>United States, Gruyere</source>
        <translation>États-Unis, Gruyère</translation>
    </message>
    <message>
        <source>United States, high-moisture Jack</source>
        <translation>États-Unis, Jack humide</translation>
    </message>
    <message>
        <source>United States, medium</source>
        <translation>États-Unis, moyen</translation>
    </message>
    <message>
        <source>United States, old</source>
        <translation>États-Unis, vieux</translation>
    </message>
    <message>
        <source>United States, semisoft</source>
        <translation>États-Unis, demi-mou</translation>
    </message>
    <message>
        <source>United States, soft ripened</source>
        <translation>États-Unis, pâte molle affinée</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>legal limit</source>
        <translation>limite légale</translation>
    </message>
    <message>
        <source>protected name</source>
        <translation>nom protégé</translation>
    </message>
    <message>
        <source>quality window</source>
        <translation>plage de qualité</translation>
    </message>
    <message>
        <source>standard limit</source>
        <translation>limite de norme</translation>
    </message>
</context>
<context>
    <name>source</name>
    <message>
        <source>0.02 % of calcium chloride shortens the time by 15-30 % at pH 6.6</source>
        <translation>0,02 % de chlorure de calcium raccourcit le temps de 15 à 30 % à pH 6,6</translation>
    </message>
    <message>
        <source>1 mM calcium lowers milk pH by 0.02-0.05</source>
        <translation>1 mM de calcium abaisse le pH du lait de 0,02 à 0,05</translation>
    </message>
    <message>
        <source>1.7-2.2 /h brackets the published screening limit pH 4.6-4.7 within 5 h at 42 °C, 1 %</source>
        <translation>1,7-2,2 /h encadre la limite de tri publiée : pH 4,6-4,7 en moins de 5 h à 42 °C, 1 %</translation>
    </message>
    <message>
        <source>18 % brine salted more than saturated (Melilli et al., Ragusano): no gain above about 20 %</source>
        <translation>une saumure à 18 % a salé davantage qu'une saturée (Melilli et al., Ragusano) : pas de gain au-dessus de 20 % environ</translation>
    </message>
    <message>
        <source>2-2.5 % in broth stops growth</source>
        <translation>2-2,5 % en bouillon arrêtent la croissance</translation>
    </message>
    <message>
        <source>2.5-3.0 % added gives 1.7-1.8 % in Cheddar, further loss comes with the pressed whey</source>
        <translation>2,5-3,0 % ajoutés donnent 1,7-1,8 % dans le cheddar, une autre perte vient avec le sérum de presse</translation>
    </message>
    <message>
        <source>24-48 h at 4 °C: 10-30 % longer</source>
        <translation>24-48 h à 4 °C : 10 à 30 % plus long</translation>
    </message>
    <message>
        <source>80-200 g per m² and day from a bare surface (psychrometric estimate)</source>
        <translation>80-200 g par m² et par jour d'une surface nue (estimation psychrométrique)</translation>
    </message>
    <message>
        <source>Beal et al., Lb. bulgaricus 398</source>
        <translation>Beal et al., Lb. bulgaricus 398</translation>
    </message>
    <message>
        <source>Beal et al., S. thermophilus 404</source>
        <translation>Beal et al., S. thermophilus 404</translation>
    </message>
    <message>
        <source>Beal et al.: 40 °C for growth, higher for acid; 40-44 °C</source>
        <translation>Beal et al. : 40 °C pour la croissance, plus haut pour l'acide ; 40-44 °C</translation>
    </message>
    <message>
        <source>Boonmee et al. 2003, Biochem. Eng. J. 14:127 (L. lactis NZ133) gives 1.10; held at the acid steps of a printed Cheddar, since the fit is flat from 1.04 to 1.07</source>
        <translation>Boonmee et al. 2003, Biochem. Eng. J. 14:127 (L. lactis NZ133) donne 1,10 ; tenu aux paliers d'acidité d'un cheddar imprimé, l'ajustement étant plat de 1,04 à 1,07</translation>
    </message>
    <message>
        <source>Cheddar and Colby 69-138 kPa (Chandan &amp; Kilara 2011)</source>
        <translation>cheddar et colby 69-138 kPa (Chandan &amp; Kilara 2011)</translation>
    </message>
    <message>
        <source>Cheddar curd carries about 1e9 per g at salting</source>
        <translation>le caillé de cheddar porte environ 1e9 par g au salage</translation>
    </message>
    <message>
        <source>Esteves et al. 2001, J. Dairy Res. 68:499: chymosin has the longest tau of the coagulants tried; size</source>
        <translation>Esteves et al. 2001, J. Dairy Res. 68:499 : la chymosine a le tau le plus long des coagulants essayés ; ampleur</translation>
    </message>
    <message>
        <source>Esteves et al. 2001: direction; size</source>
        <translation>Esteves et al. 2001 : sens ; ampleur</translation>
    </message>
    <message>
        <source>Floury et al. 2010, Table 2: 0.09-0.46 over all cheese</source>
        <translation>Floury et al. 2010, Table 2 : 0,09-0,46 sur tous les fromages</translation>
    </message>
    <message>
        <source>Geurts et al. 1974: about 2; Guinee &amp; Fox 1983: 2.42 at the surface</source>
        <translation>Geurts et al. 1974 : environ 2 ; Guinee &amp; Fox 1983 : 2,42 à la surface</translation>
    </message>
    <message>
        <source>Hill, University of Guelph, Cheddar: 3/8 in cut</source>
        <translation>Hill, University of Guelph, Cheddar : décaillage à 3/8 in</translation>
    </message>
    <message>
        <source>Hill, University of Guelph, Rennet activity: 200 mL single strength per 1000 kg at 30-32 °C coagulates in 15-20 min</source>
        <translation>Hill, University of Guelph, Rennet activity : 200 mL de force simple par 1000 kg à 30-32 °C coagulent en 15-20 min</translation>
    </message>
    <message>
        <source>Hill, University of Guelph: 1 °C per 5 min at first; 30-39 °C in 30 min over all</source>
        <translation>Hill, University of Guelph : 1 °C par 5 min d'abord ; 30-39 °C en 30 min en tout</translation>
    </message>
    <message>
        <source>Huber et al. 2001, Milchwissenschaft 56:549: cut skim rennet gel, 20-50 °C</source>
        <translation>Huber et al. 2001, Milchwissenschaft 56:549 : gel présure de lait écrémé, coupé, 20-50 °C</translation>
    </message>
    <message>
        <source>Huber et al. 2001: no further increase above 50 °C, a skin blocks the outflow</source>
        <translation>Huber et al. 2001 : plus de hausse au-dessus de 50 °C, une peau bloque la sortie</translation>
    </message>
    <message>
        <source>J. Dairy Res., capillary viscometer against the Berridge time: the visible floc comes 2-3 min late</source>
        <translation>J. Dairy Res., viscosimètre capillaire contre temps de Berridge : le floc visible vient 2-3 min plus tard</translation>
    </message>
    <message>
        <source>J. Dairy Sci. 2023, jds.2022-22561: milk of 95 °C/5 min takes 74 % longer (cow)</source>
        <translation>J. Dairy Sci. 2023, jds.2022-22561 : un lait de 95 °C/5 min met 74 % de temps en plus (vache)</translation>
    </message>
    <message>
        <source>J. Food Process. Technol. 4:240: 40-45, at most 50 °C</source>
        <translation>J. Food Process. Technol. 4:240 : 40-45, au plus 50 °C</translation>
    </message>
    <message>
        <source>L. lactis 30-34, cremoris 28-31 °C</source>
        <translation>L. lactis 30-34, cremoris 28-31 °C</translation>
    </message>
    <message>
        <source>Lb. helveticus uses galactose</source>
        <translation>Lb. helveticus utilise le galactose</translation>
    </message>
    <message>
        <source>Lee 2017 Table 2; Chandan &amp; Kilara 2011 Fig. 10.5</source>
        <translation>Lee 2017 Table 2 ; Chandan &amp; Kilara 2011 Fig. 10.5</translation>
    </message>
    <message>
        <source>Lee 2017: 64 % of the calcium still insoluble in Cheddar-type cheese at pH 5.2</source>
        <translation>Lee 2017 : 64 % du calcium encore insoluble dans un fromage de type cheddar à pH 5,2</translation>
    </message>
    <message>
        <source>Lee 2017: lactose use slows above S/M 4.4; checked at 5-6 %</source>
        <translation>Lee 2017 : l'usage du lactose ralentit au-dessus d'un sel sur humidité de 4,4 ; contrôlé à 5-6 %</translation>
    </message>
    <message>
        <source>Lucey, Gorry &amp; Fox 1993: acidified to 6.2 or below, heated milk clots nearly as unheated</source>
        <translation>Lucey, Gorry &amp; Fox 1993 : acidifié à 6,2 ou moins, le lait chauffé caille presque comme le cru</translation>
    </message>
    <message>
        <source>Luedeking-Piret form, Boonmee et al. 2003; share</source>
        <translation>forme de Luedeking-Piret, Boonmee et al. 2003 ; part</translation>
    </message>
    <message>
        <source>Marschoun et al. 2001, Int. J. Food Prop. 4:383: 0.354-0.481</source>
        <translation>Marschoun et al. 2001, Int. J. Food Prop. 4:383 : 0,354-0,481</translation>
    </message>
    <message>
        <source>Marschoun et al. 2001: 2.44-3.10</source>
        <translation>Marschoun et al. 2001 : 2,44-3,10</translation>
    </message>
    <message>
        <source>Pazzola 2019, Animals 9:540: shorter RCT than cow; sheep RCT 8.5-9 min (from memory, medium)</source>
        <translation>Pazzola 2019, Animals 9:540 : temps de prise (RCT) plus court que la vache ; RCT de brebis 8,5-9 min (de mémoire, moyen)</translation>
    </message>
    <message>
        <source>Pazzola et al. 2011, Calabrian goats 2002: RCT 12.5-17 min against 17-22 for Holstein, native pH</source>
        <translation>Pazzola et al. 2011, 2002 chèvres de Calabre : temps de prise (RCT) 12,5-17 min contre 17-22 pour la Holstein, pH natif</translation>
    </message>
    <message>
        <source>Scott Blair &amp; Burnett 1959 form G = Ginf exp(-tau/(t - tg)); set so that G' is 10-35 Pa at 2-3 flocculation times (Lopez et al. 1998 and others)</source>
        <translation>forme de Scott Blair &amp; Burnett 1959, G = Ginf exp(-tau/(t - tg)) ; réglé pour que G' soit de 10-35 Pa à 2-3 temps de floculation (Lopez et al. 1998 et d'autres)</translation>
    </message>
    <message>
        <source>Thom &amp; Fisk 1918 Table VI-VIII: 96.9 %; Chandan &amp; Kilara 2011: 96.2 %</source>
        <translation>Thom &amp; Fisk 1918 Table VI-VIII : 96,9 % ; Chandan &amp; Kilara 2011 : 96,2 %</translation>
    </message>
    <message>
        <source>a bed of curd in whey weighs by the difference in density only, about 30 kg/m³ over 10 cm</source>
        <translation>un lit de caillé dans le sérum ne pèse que par la différence de densité, environ 30 kg/m³ sur 10 cm</translation>
    </message>
    <message>
        <source>a few drops of rennet firm a lactic curd and help it drain (direction: common practice); size</source>
        <translation>quelques gouttes de présure raffermissent un caillé lactique et l'aident à s'égoutter (sens : pratique courante) ; ampleur</translation>
    </message>
    <message>
        <source>about two thirds of the calcium is in the micelle</source>
        <translation>environ deux tiers du calcium sont dans la micelle</translation>
    </message>
    <message>
        <source>acid curd holds more water: lactic and surface-ripened soft cheeses of 52-66 % moisture</source>
        <translation>le caillé acide tient plus d'eau : fromages lactiques et pâtes molles à croûte de 52-66 % d'humidité</translation>
    </message>
    <message>
        <source>acid gelation near pH 4.9 at 20 °C, 5.1-5.2 at 40 °C</source>
        <translation>gélification acide vers pH 4,9 à 20 °C, 5,1-5,2 à 40 °C</translation>
    </message>
    <message>
        <source>acid gels drain less steeply with temperature than rennet gels</source>
        <translation>l'égouttage d'un gel acide dépend moins de la température que celui d'un gel présure</translation>
    </message>
    <message>
        <source>acid milk gels reach 100-300 Pa</source>
        <translation>les gels de lait acides atteignent 100-300 Pa</translation>
    </message>
    <message>
        <source>after rind closure multiply by 0.1-0.3; core still drains to the faces</source>
        <translation>la croûte fermée, multiplier par 0,1-0,3 ; le cœur s'égoutte encore vers les faces</translation>
    </message>
    <message>
        <source>air between grains worked apart; pressing under whey keeps it out (Hill, University of Guelph)</source>
        <translation>de l'air entre les grains désunis ; presser sous sérum l'empêche d'entrer (Hill, University of Guelph)</translation>
    </message>
    <message>
        <source>as the acid limit of knitting</source>
        <translation>comme le seuil d'acidité de la soudure</translation>
    </message>
    <message>
        <source>as the buffering of the casein; the last group is colloidal phosphate</source>
        <translation>comme le pouvoir tampon de la caséine ; le dernier groupe est le phosphate colloïdal</translation>
    </message>
    <message>
        <source>as the buffering of the milk serum</source>
        <translation>comme le pouvoir tampon du sérum du lait</translation>
    </message>
    <message>
        <source>as the cold limit of knitting</source>
        <translation>comme le seuil de froid de la soudure</translation>
    </message>
    <message>
        <source>as the dry limit of knitting</source>
        <translation>comme le seuil de sécheresse de la soudure</translation>
    </message>
    <message>
        <source>as the sweet limit of knitting</source>
        <translation>comme le seuil de douceur de la soudure</translation>
    </message>
    <message>
        <source>as the time of brief pressing</source>
        <translation>comme le temps de pressage bref</translation>
    </message>
    <message>
        <source>as the time of hard pressing</source>
        <translation>comme le temps de pressage fort</translation>
    </message>
    <message>
        <source>as the warm limit of knitting</source>
        <translation>comme le seuil de chaleur de la soudure</translation>
    </message>
    <message>
        <source>below about 50 °C ripe curd does not flow</source>
        <translation>sous 50 °C environ un caillé mûr ne coule pas</translation>
    </message>
    <message>
        <source>below half of the usual least pressure</source>
        <translation>sous la moitié de la plus faible pression d'usage</translation>
    </message>
    <message>
        <source>below it, mechanical openings are likely</source>
        <translation>au-dessous, des ouvertures mécaniques sont probables</translation>
    </message>
    <message>
        <source>below it, mould gets in on a natural rind</source>
        <translation>au-dessous, la moisissure entre dans une croûte naturelle</translation>
    </message>
    <message>
        <source>between ricotta in its basket (USDA SR26 01036 and 01037: water 71.7 and 74.4, protein 11.3), chhana in its cloth (Guelph Table 1.2: 53 and 17) and paneer under 2-3 kPa (54 %, from memory)</source>
        <translation>entre la ricotta en faisselle (USDA SR26 01036 et 01037 : eau 71,7 et 74,4, protéines 11,3), le chhana en toile (Guelph Table 1.2 : 53 et 17) et le paneer sous 2-3 kPa (54 %, de mémoire)</translation>
    </message>
    <message>
        <source>brine is saturated at 26.4 % w/w, 26.3-26.4 at 20-25 °C (general encyclopaedia)</source>
        <translation>la saumure est saturée à 26,4 % m/m, 26,3-26,4 à 20-25 °C (encyclopédie générale)</translation>
    </message>
    <message>
        <source>buffalo RCT 12-16 min</source>
        <translation>temps de prise (RCT) de bufflonne 12-16 min</translation>
    </message>
    <message>
        <source>by theory 1 where the surface controls, 2 where the inside does; fitted to less, as stirred grain of any cut is broken further</source>
        <translation>en théorie 1 où la surface commande, 2 où l'intérieur commande ; ajusté plus bas, car un grain brassé de toute coupe se brise encore</translation>
    </message>
    <message>
        <source>calibrated on pressed and brined families at 31 °C, 9.5 mm, pH 6.5, stirred</source>
        <translation>calibré sur les familles pressées et saumurées à 31 °C, 9,5 mm, pH 6,5, brassé</translation>
    </message>
    <message>
        <source>camel chymosin clots cow milk well at higher pH</source>
        <translation>la chymosine de chameau caille bien le lait de vache à pH plus haut</translation>
    </message>
    <message>
        <source>ceiling in milk about 1e9 per mL (Mullan, Starter concentrates)</source>
        <translation>plafond dans le lait environ 1e9 par mL (Mullan, Starter concentrates)</translation>
    </message>
    <message>
        <source>cheese in a brine weaker than itself softens and takes up water (direction); size</source>
        <translation>un fromage dans une saumure plus faible que lui mollit et prend de l'eau (sens) ; ampleur</translation>
    </message>
    <message>
        <source>cold acid-and-heat curd drains in hours</source>
        <translation>le caillé acide à chaud, refroidi, s'égoutte en heures</translation>
    </message>
    <message>
        <source>colloidal phosphate dissolved: 0.1 at 6.4, 0.3 at 6.0, 0.55 at 5.6, 0.95 at 5.2</source>
        <translation>phosphate colloïdal dissous : 0,1 à 6,4, 0,3 à 6,0, 0,55 à 5,6, 0,95 à 5,2</translation>
    </message>
    <message>
        <source>colloidal phosphate takes up about 1.8 H in one step</source>
        <translation>le phosphate colloïdal prend environ 1,8 H d'un coup</translation>
    </message>
    <message>
        <source>cottage curd cooked to 54-57 °C in its whey ends at 79.8 % moisture with next to no weight on it (Guelph, short set and Table 1.2)</source>
        <translation>le caillé de cottage cuit à 54-57 °C dans son sérum finit à 79,8 % d'humidité presque sans poids sur lui (Guelph, caillage court et tableau 1.2)</translation>
    </message>
    <message>
        <source>crumbs that dried out do not unite (Thom &amp; Fisk 1918); a usual Cheddar comes in at 40</source>
        <translation>des miettes séchées ne s'unissent pas (Thom &amp; Fisk 1918) ; un cheddar d'usage arrive à 40</translation>
    </message>
    <message>
        <source>curd below about 5.0 is short (Lawrence et al. 1987)</source>
        <translation>un caillé sous 5,0 environ est court (Lawrence et al. 1987)</translation>
    </message>
    <message>
        <source>curd keeps most of the starter as the gel closes round it; whey at the dip holds about a tenth as many per mL</source>
        <translation>le caillé garde la plupart du levain, le gel se fermant autour ; le sérum au soutirage en tient environ dix fois moins par mL</translation>
    </message>
    <message>
        <source>curd ladled before it is sour stays wet (direction: common practice); size</source>
        <translation>un caillé moulé à la louche avant d'être acide reste humide (sens : pratique courante) ; ampleur</translation>
    </message>
    <message>
        <source>curd reaches 55-65 °C in water of 70-85 °C</source>
        <translation>le caillé atteint 55-65 °C dans une eau à 70-85 °C</translation>
    </message>
    <message>
        <source>decimal reduction of lactococci at 52 °C</source>
        <translation>réduction décimale des lactocoques à 52 °C</translation>
    </message>
    <message>
        <source>disturbance raises the drainage of drained curd above all, more than temperature and pressure (J. Dairy Res., continuously made curd); 6 °C doubles it, so stirred dry more than twice a bed left still; size</source>
        <translation>le brassage accroît l'égouttage du caillé soutiré plus que tout, plus que la température et la pression (J. Dairy Res., caillé fabriqué en continu) ; 6 °C le doublent, donc brassé à sec plus du double d'un lit laissé au repos ; ampleur</translation>
    </message>
    <message>
        <source>drained bed; curd kept under whey drains slower (J. Dairy Res., continuously made curd)</source>
        <translation>lit soutiré ; un caillé tenu sous sérum s'égoutte moins vite (J. Dairy Res., caillé fabriqué en continu)</translation>
    </message>
    <message>
        <source>drained curd weighs 1 kPa for every 10 cm of depth</source>
        <translation>un caillé égoutté pèse 1 kPa pour 10 cm de profondeur</translation>
    </message>
    <message>
        <source>e-course on food engineering after Kessler 1981</source>
        <translation>cours en ligne de génie alimentaire d'après Kessler 1981</translation>
    </message>
    <message>
        <source>early hard pressing closes the rind and keeps whey in (Geurts 1978)</source>
        <translation>un pressage fort et précoce ferme la croûte et garde le sérum dedans (Geurts 1978)</translation>
    </message>
    <message>
        <source>end point of pressed curd</source>
        <translation>point final du caillé pressé</translation>
    </message>
    <message>
        <source>equilibration of curd of 0.5-1 cm with whey or wash water</source>
        <translation>mise en équilibre d'un caillé de 0,5-1 cm avec le sérum ou l'eau de lavage</translation>
    </message>
    <message>
        <source>falls with fat (Marshall 1982); 1 % more milk fat asks 1.9 °C more cook (Thom &amp; Fisk 1918 s.197)</source>
        <translation>baisse avec la matière grasse (Marshall 1982) ; 1 % de matière grasse de plus dans le lait demande 1,9 °C de cuisson de plus (Thom &amp; Fisk 1918 s.197)</translation>
    </message>
    <message>
        <source>farm pressing of unsalted curd at 10 times its own weight, 10 cm high (Thom &amp; Fisk 1918)</source>
        <translation>pressage fermier d'un caillé non salé à 10 fois son poids, 10 cm de haut (Thom &amp; Fisk 1918)</translation>
    </message>
    <message>
        <source>faster compression, but an optimum (Int. Dairy J. 2011, single grain)</source>
        <translation>compression plus rapide, mais avec un optimum (Int. Dairy J. 2011, grain seul)</translation>
    </message>
    <message>
        <source>fine grain evens out within minutes, through the film of whey around it</source>
        <translation>un grain fin s'équilibre en quelques minutes, à travers la pellicule de sérum qui l'entoure</translation>
    </message>
    <message>
        <source>fitted: cooked and stretched kinds came 1 to 3 points too dry, hot-drained ones too wet, with one end point at every temperature</source>
        <translation>ajusté : avec un seul point final à toutes les températures, les sortes cuites et filées sortaient 1 à 3 points trop sèches, celles égouttées à chaud trop humides</translation>
    </message>
    <message>
        <source>form: Storry &amp; Ford 1982; exponent</source>
        <translation>forme : Storry &amp; Ford 1982 ; exposant</translation>
    </message>
    <message>
        <source>full pressure within this time closes the skin before the whey is out</source>
        <translation>la pleine pression avant ce temps ferme la croûte avant que le sérum soit sorti</translation>
    </message>
    <message>
        <source>gels of heated milk are several times as stiff (direction: from memory, high); size kept low</source>
        <translation>les gels de lait chauffé sont plusieurs fois plus raides (sens : de mémoire, haut) ; ampleur tenue basse</translation>
    </message>
    <message>
        <source>half of the effect of cold storage is there after a day</source>
        <translation>la moitié de l'effet du stockage au froid est là après un jour</translation>
    </message>
    <message>
        <source>half of the gain over own weight; moisture is not proportional to pressure (Thom &amp; Fisk 1918 s.206)</source>
        <translation>moitié du gain sur le propre poids ; l'humidité n'est pas proportionnelle à la pression (Thom &amp; Fisk 1918 s.206)</translation>
    </message>
    <message>
        <source>half-saturation; small against 0.27, wide enough for five-minute steps</source>
        <translation>demi-saturation ; petite devant 0,27, assez large pour des pas de cinq minutes</translation>
    </message>
    <message>
        <source>handbook value</source>
        <translation>valeur de manuel</translation>
    </message>
    <message>
        <source>hardly any syneresis of rennet gel below about 20 °C (Walstra)</source>
        <translation>presque pas de synérèse d'un gel présure sous 20 °C environ (Walstra)</translation>
    </message>
    <message>
        <source>heated milk makes gels that hold their whey (direction: from memory, high); yoghurt of such milk hung overnight keeps 75-78 % of water (labneh: from memory, medium); size</source>
        <translation>le lait chauffé fait des gels qui gardent leur sérum (sens : de mémoire, haut) ; un yaourt d'un tel lait suspendu une nuit garde 75-78 % d'eau (labné : de mémoire, moyen) ; ampleur</translation>
    </message>
    <message>
        <source>hot acid-and-heat curd lets most of its whey go within five minutes and is pressed for 10-20 min (paneer: common practice); size</source>
        <translation>un caillé acide à chaud rend le plus gros de son sérum en cinq minutes et se presse 10-20 min (paneer : pratique courante) ; ampleur</translation>
    </message>
    <message>
        <source>hotter cooker, drier cheese; cool water is kneaded in (direction: from memory, medium); size</source>
        <translation>eau de filage plus chaude, fromage plus sec ; une eau fraîche s'incorpore au filage (sens : de mémoire, moyen) ; ampleur</translation>
    </message>
    <message>
        <source>hotter water takes more fat (direction: from memory, medium); size</source>
        <translation>une eau plus chaude emporte plus de matière grasse (sens : de mémoire, moyen) ; ampleur</translation>
    </message>
    <message>
        <source>how sharply the closing curd slows</source>
        <translation>netteté du ralentissement du caillé qui se ferme</translation>
    </message>
    <message>
        <source>hung, pressed and moulded lactic cheeses: 2.9 at 3 kPa, 4.3-4.9 under their own weight (SR26 01159, Thom &amp; Fisk 1918)</source>
        <translation>fromages lactiques suspendus, pressés et moulés : 2,9 à 3 kPa, 4,3-4,9 sous leur propre poids (SR26 01159, Thom &amp; Fisk 1918)</translation>
    </message>
    <message>
        <source>inorganic phosphate 10.5, citrate 9.2 (two steps), whey protein groups</source>
        <translation>phosphate inorganique 10,5, citrate 9,2 (deux marches), groupes des protéines du sérum</translation>
    </message>
    <message>
        <source>isoelectric point of casein, where the gel holds together best</source>
        <translation>point isoélectrique de la caséine, où le gel tient le mieux</translation>
    </message>
    <message>
        <source>lactic curd drains overnight (8-24 h)</source>
        <translation>un caillé lactique s'égoutte en une nuit (8-24 h)</translation>
    </message>
    <message>
        <source>lactis 40-43, cremoris 38-40 °C; chosen on the Cheddar row of the small acid model</source>
        <translation>lactis 40-43, cremoris 38-40 °C ; choisi sur la ligne cheddar du petit modèle d'acidité</translation>
    </message>
    <message>
        <source>lactococci 5-8 °C</source>
        <translation>lactocoques 5-8 °C</translation>
    </message>
    <message>
        <source>line by eye through the same table</source>
        <translation>droite tracée à l'œil sur la même table</translation>
    </message>
    <message>
        <source>longer working, drier cheese (direction: from memory, medium); size</source>
        <translation>filage plus long, fromage plus sec (sens : de mémoire, moyen) ; ampleur</translation>
    </message>
    <message>
        <source>lower pH, faster (Marshall 1982; small between 6.1 and 6.5 in drained curd)</source>
        <translation>pH plus bas, plus vite (Marshall 1982 ; faible entre 6,1 et 6,5 dans un caillé égoutté)</translation>
    </message>
    <message>
        <source>microbial coagulants depend less on pH than calf rennet</source>
        <translation>les coagulants microbiens dépendent moins du pH que la présure de veau</translation>
    </message>
    <message>
        <source>milk acidified at room temperature gels near pH 4.9-5.0, earlier when warm or with rennet</source>
        <translation>un lait acidifié à température ambiante prend vers pH 4,9-5,0, plus tôt à la chaleur ou avec de la présure</translation>
    </message>
    <message>
        <source>milk of 90 °C gels near pH 5.2-5.3, unheated near 4.9</source>
        <translation>un lait de 90 °C prend vers pH 5,2-5,3, non chauffé vers 4,9</translation>
    </message>
    <message>
        <source>milk or whey held above 85 °C</source>
        <translation>lait ou sérum tenu au-dessus de 85 °C</translation>
    </message>
    <message>
        <source>milk salts about 0.092 kg per kg casein</source>
        <translation>sels du lait environ 0,092 kg par kg de caséine</translation>
    </message>
    <message>
        <source>moister curd runs together under its own weight</source>
        <translation>un caillé plus humide se soude sous son propre poids</translation>
    </message>
    <message>
        <source>most dry salt is in the curd within an hour; loss is worst when pressed within 15 min</source>
        <translation>le plus gros du sel à sec est dans le caillé en une heure ; la perte est la plus forte si l'on presse avant 15 min</translation>
    </message>
    <message>
        <source>no glycomacropeptide is split off, more fines</source>
        <translation>pas de glycomacropeptide détaché, plus de fines</translation>
    </message>
    <message>
        <source>non-negative fit to the milk table (peak at pH 5.05: Tomasula et al. 1999) less the serum groups</source>
        <translation>ajustement sans valeur négative à la table du lait (pic à pH 5,05 : Tomasula et al. 1999), moins les groupes du sérum</translation>
    </message>
    <message>
        <source>of a whole make, with what runs when it is milled, salted and pressed: 0.34 per 100 by the balance of 48 factories, 0.28-0.33 at the vat alone (Thom &amp; Fisk 1918, Tables VI-VIII and XII); 10 % of the fat in the US federal order; 0.47 in Chandan &amp; Kilara 2011, Fig. 10.5; 9-14 % of the fat by Guelph Table 6.1</source>
        <translation>d'une fabrication entière, avec ce qui coule au broyage, au salage et au pressage : 0,34 pour 100 par le bilan de 48 fromageries, 0,28-0,33 à la cuve seule (Thom &amp; Fisk 1918, Tables VI-VIII et XII) ; 10 % de la matière grasse dans l'ordonnance fédérale des États-Unis ; 0,47 dans Chandan &amp; Kilara 2011, Fig. 10.5 ; 9-14 % de la matière grasse selon Guelph Table 6.1</translation>
    </message>
    <message>
        <source>one in seven is left after a minute: hotter makes no difference to a make, and would keep strides short</source>
        <translation>il en reste une sur sept après une minute : plus chaud ne change rien à une fabrication, et raccourcirait les pas</translation>
    </message>
    <message>
        <source>out through both faces: half the way, a quarter of the time, as any pressed layer</source>
        <translation>sortie par les deux faces : la moitié du chemin, le quart du temps, comme toute couche pressée</translation>
    </message>
    <message>
        <source>own weight in moulds</source>
        <translation>propre poids en moules</translation>
    </message>
    <message>
        <source>own weight in the form, mean over its height: half of density times gravity times height</source>
        <translation>propre poids en moule, moyenne sur la hauteur : moitié de la densité fois la pesanteur fois la hauteur</translation>
    </message>
    <message>
        <source>paneer precipitated at pH 5.5 holds about nine points more water than at 5.0 (from memory, medium); ricotta at pH 5.9 beside chhana</source>
        <translation>le paneer précipité à pH 5,5 garde environ neuf points d'eau de plus qu'à 5,0 (de mémoire, moyen) ; la ricotta à pH 5,9 à côté du chhana</translation>
    </message>
    <message>
        <source>particle gels give way as a power of the stress; same cheeses</source>
        <translation>les gels de particules cèdent selon une puissance de la contrainte ; mêmes fromages</translation>
    </message>
    <message>
        <source>pasteurised milk, of which most makes of the fit are</source>
        <translation>lait pasteurisé, comme celui de la plupart des fabrications du calage</translation>
    </message>
    <message>
        <source>permeability of acid casein gels, whose fractal dimension is about 2.35: 2 / (3 - 2.35) (Bremer, van Vliet &amp; Walstra 1989)</source>
        <translation>perméabilité des gels acides de caséine, dont la dimension fractale est d'environ 2,35 : 2 / (3 - 2,35) (Bremer, van Vliet &amp; Walstra 1989)</translation>
    </message>
    <message>
        <source>pieces are scalded at 80-95 °C to shrink and stay whole; a cook of up to 58 °C does not do it</source>
        <translation>les morceaux s'échaudent à 80-95 °C pour se resserrer et rester entiers ; une cuisson jusqu'à 58 °C ne le fait pas</translation>
    </message>
    <message>
        <source>pieces float, heated through and shrunk, after 20-30 min</source>
        <translation>les morceaux flottent, chauffés à cœur et resserrés, après 20-30 min</translation>
    </message>
    <message>
        <source>pieces that have joined in a form drain as one body (they fuse within 25 min of contact, Lodaite et al. 2002); channels between them stay open for hours, so little is left</source>
        <translation>des morceaux joints en moule s'égouttent comme un seul corps (ils se soudent en 25 min de contact, Lodaite et al. 2002) ; des canaux entre eux restent ouverts des heures, il en reste donc peu</translation>
    </message>
    <message>
        <source>plant coagulants depend less on pH</source>
        <translation>les coagulants végétaux dépendent moins du pH</translation>
    </message>
    <message>
        <source>pressed at a usual pressure</source>
        <translation>pressé à une pression d'usage</translation>
    </message>
    <message>
        <source>pressed curd</source>
        <translation>caillé pressé</translation>
    </message>
    <message>
        <source>reference condition of the rennet figure</source>
        <translation>condition de référence du chiffre de la présure</translation>
    </message>
    <message>
        <source>reference load of the closing of the rind</source>
        <translation>charge de référence de la fermeture de la croûte</translation>
    </message>
    <message>
        <source>reference of how fat slows the whey</source>
        <translation>référence du ralentissement du sérum par la matière grasse</translation>
    </message>
    <message>
        <source>reference of that rate: curd hung overnight</source>
        <translation>référence de cette vitesse : caillé suspendu une nuit</translation>
    </message>
    <message>
        <source>reference of the draining rate of lactic curd: curd ladled in lumps</source>
        <translation>référence de la vitesse d'égouttage du caillé lactique : caillé moulé à la louche en morceaux</translation>
    </message>
    <message>
        <source>reference of the time to even out</source>
        <translation>référence du temps d'équilibre</translation>
    </message>
    <message>
        <source>reference species</source>
        <translation>espèce de référence</translation>
    </message>
    <message>
        <source>reference temperature of the rate at which curd gives off whey</source>
        <translation>température de référence de la vitesse à laquelle le caillé rend son sérum</translation>
    </message>
    <message>
        <source>relaxation to equilibrium with pH</source>
        <translation>retour à l'équilibre avec le pH</translation>
    </message>
    <message>
        <source>resting film and rind in still brine</source>
        <translation>pellicule au repos et croûte en saumure calme</translation>
    </message>
    <message>
        <source>ricotta of sweet whey: at 85-90 °C it flocculates by heat alone near pH 6.4, most of it when soured to 5.8-6.0</source>
        <translation>ricotta de lactosérum doux : à 85-90 °C il flocule par la seule chaleur vers pH 6,4, presque tout une fois acidifié à 5,8-6,0</translation>
    </message>
    <message>
        <source>rods sour milk to pH 3.5-4.0, cocci stop near 4.4</source>
        <translation>les bâtonnets acidifient le lait à pH 3,5-4,0, les coques s'arrêtent vers 4,4</translation>
    </message>
    <message>
        <source>salt in the cooker water adds some tenths of a per cent</source>
        <translation>le sel de l'eau de filage ajoute quelques dixièmes de pour cent</translation>
    </message>
    <message>
        <source>salted curd fuses badly above about 5.6 because it does not flow (text after Walstra)</source>
        <translation>un caillé salé se soude mal au-dessus de 5,6 environ parce qu'il ne coule pas (texte d'après Walstra)</translation>
    </message>
    <message>
        <source>salted curd too warm: fat runs, greasy faces do not join (Thom &amp; Fisk 1918 s.206); kept at 27-32</source>
        <translation>caillé salé trop chaud : la matière grasse coule, des faces grasses ne se joignent pas (Thom &amp; Fisk 1918 s.206) ; tenu à 27-32</translation>
    </message>
    <message>
        <source>scalded cheese of cow's milk before its salt: 44-47 % water, 21-24 % protein</source>
        <translation>fromage échaudé de lait de vache avant son sel : 44-47 % d'eau, 21-24 % de protéines</translation>
    </message>
    <message>
        <source>set by the milk buffer so that an unwashed culture stops near pH 4.4</source>
        <translation>réglé par le pouvoir tampon du lait pour qu'une culture non lavée s'arrête vers pH 4,4</translation>
    </message>
    <message>
        <source>settled on the exact series of a 36 x 28 x 18 cm block (slab 1, wheel about 2, cube 3)</source>
        <translation>arrêté sur la série exacte d'un bloc de 36 x 28 x 18 cm (plaque 1, meule environ 2, cube 3)</translation>
    </message>
    <message>
        <source>settled so that milk stops near pH 4.4 and salted Cheddar keeps lactose at a day (Lee 2017)</source>
        <translation>arrêté pour que le lait s'arrête vers pH 4,4 et que le cheddar salé garde du lactose à un jour (Lee 2017)</translation>
    </message>
    <message>
        <source>skimmed milk cannot lose more fat than it has</source>
        <translation>un lait écrémé ne peut perdre plus de matière grasse qu'il n'en a</translation>
    </message>
    <message>
        <source>smaller pieces, more cut surface</source>
        <translation>morceaux plus petits, plus de surface coupée</translation>
    </message>
    <message>
        <source>softens the step</source>
        <translation>adoucit la marche</translation>
    </message>
    <message>
        <source>still air with radiation</source>
        <translation>air calme avec rayonnement</translation>
    </message>
    <message>
        <source>still liquid</source>
        <translation>liquide calme</translation>
    </message>
    <message>
        <source>still under whey against stirred</source>
        <translation>au repos sous sérum par rapport au brassé</translation>
    </message>
    <message>
        <source>still under whey against stirred, as rennet curd</source>
        <translation>au repos sous sérum par rapport au brassé, comme le caillé présure</translation>
    </message>
    <message>
        <source>stretched cheese keeps 82-88 % of milk fat</source>
        <translation>le fromage filé garde 82-88 % de la matière grasse du lait</translation>
    </message>
    <message>
        <source>stretched cheese of 46-55 % moisture before brine (Guelph Table 1.2: 54.1, protein 19.4)</source>
        <translation>fromage filé de 46-55 % d'humidité avant saumure (Guelph Table 1.2 : 54,1, protéines 19,4)</translation>
    </message>
    <message>
        <source>survives an Alpine cook of 52-57 °C</source>
        <translation>survit à une cuisson alpine de 52-57 °C</translation>
    </message>
    <message>
        <source>syneresis of rennet gels grows about threefold from 25 to 40 °C, of which the thinner whey is a part (direction: from memory, high); size</source>
        <translation>la synérèse des gels de présure triple à peu près de 25 à 40 °C, en partie parce que le sérum est plus fluide (sens : de mémoire, haut) ; ampleur</translation>
    </message>
    <message>
        <source>the effect of pH is read between 6.6 and 6.3 (Fox &amp; McSweeney 1998, Fig. 10.10); it levels off over this span below 6.5</source>
        <translation>l'effet du pH se lit entre 6,6 et 6,3 (Fox &amp; McSweeney 1998, Fig. 10.10) ; il plafonne sur cette étendue sous 6,5</translation>
    </message>
    <message>
        <source>the published ratios stand for brines of 18 % to saturated: about 2, 2.42 at the rind in strong brine (Guinee &amp; Fox 1983); in weak brine cheese gives off little water and softens, so the ratio goes with the strength</source>
        <translation>les rapports publiés valent pour des saumures de 18 % à saturées : environ 2, 2,42 à la croûte en saumure forte (Guinee &amp; Fox 1983) ; en saumure faible le fromage cède peu d'eau et s'amollit, le rapport suit donc la concentration</translation>
    </message>
    <message>
        <source>the reconstructed milk table is honest to 12 %</source>
        <translation>la table du lait reconstituée est juste à 12 % près</translation>
    </message>
    <message>
        <source>the same: some curd already at pH 6.5, all of it only near 5.8</source>
        <translation>la même : un peu de caillé dès pH 6,5, tout seulement vers 5,8</translation>
    </message>
    <message>
        <source>the same; Queso blanco pressed, moisture 53, protein 19.7 (Guelph Table 1.2)</source>
        <translation>les mêmes ; queso blanco pressé, humidité 53, protéines 19,7 (Guelph Table 1.2)</translation>
    </message>
    <message>
        <source>the sheet formula over-predicts by 0-40 %: the salted zone loses water</source>
        <translation>la formule de la plaque prévoit 0 à 40 % de trop : la zone salée perd de l'eau</translation>
    </message>
    <message>
        <source>the temperature at which the killing times stand</source>
        <translation>température à laquelle sont donnés les temps de mort</translation>
    </message>
    <message>
        <source>the upper end of farm pressing by 10-20 times own weight; below it nothing closes early</source>
        <translation>haut du pressage fermier à 10-20 fois son poids ; au-dessous rien ne se ferme trop tôt</translation>
    </message>
    <message>
        <source>thermophiles are less salt tolerant than lactococci</source>
        <translation>les thermophiles supportent moins le sel que les lactocoques</translation>
    </message>
    <message>
        <source>time in which hot-water working does most of its loss</source>
        <translation>temps dans lequel le travail à l'eau chaude fait le plus gros de sa perte</translation>
    </message>
    <message>
        <source>too cold, pieces do not fuse (Thom &amp; Fisk 1918 s.206); Cheddar is pressed at 26.7-29.4</source>
        <translation>trop froid, les morceaux ne se soudent pas (Thom &amp; Fisk 1918 s.206) ; le cheddar se presse à 26,7-29,4</translation>
    </message>
    <message>
        <source>too fast early heating thickens the surface film (Thom &amp; Fisk 1918 s.197)</source>
        <translation>un premier chauffage trop rapide épaissit la peau du grain (Thom &amp; Fisk 1918 s.197)</translation>
    </message>
    <message>
        <source>too little pressing leaves openings (Thom &amp; Fisk 1918 s.256)</source>
        <translation>un pressage trop faible laisse des ouvertures (Thom &amp; Fisk 1918 s.256)</translation>
    </message>
    <message>
        <source>trade figures and individual-cow regressions; the weakest constant of setting</source>
        <translation>chiffres du métier et régressions de vaches une à une ; la constante la plus faible de la prise</translation>
    </message>
    <message>
        <source>usual for vegetative cells</source>
        <translation>d'usage pour les cellules végétatives</translation>
    </message>
    <message>
        <source>wet inside, firm outside</source>
        <translation>humide dedans, ferme dehors</translation>
    </message>
    <message>
        <source>what counts as full pressure at once</source>
        <translation>ce qui compte comme pleine pression d'emblée</translation>
    </message>
    <message>
        <source>where curd counts as salted before it is formed</source>
        <translation>où le caillé compte comme salé avant le moulage</translation>
    </message>
    <message>
        <source>where the closing curd halves the rate (log-time law while stirred: Teagasc group, Int. J. Dairy Technol.)</source>
        <translation>où le caillé qui se ferme ralentit de moitié (loi en logarithme du temps, sous brassage : groupe Teagasc, Int. J. Dairy Technol.)</translation>
    </message>
    <message>
        <source>where the end point changes from rennet to acid curd; the colloidal phosphate is gone below about 5.0</source>
        <translation>où le point final passe du caillé présure au caillé acide ; le phosphate colloïdal est parti sous 5,0 environ</translation>
    </message>
    <message>
        <source>whey has a shorter way out of a small form than out of a bag, though through foot and wall only</source>
        <translation>le sérum a moins de chemin pour sortir d'un petit moule que d'un sac, mais par le fond et la paroi seulement</translation>
    </message>
    <message>
        <source>whey must still find its way out of cloth or basket</source>
        <translation>le sérum doit encore trouver à sortir de la toile ou de la faisselle</translation>
    </message>
    <message>
        <source>whey must still pass the film of the grain: small hot grain is at its end point within minutes, not seconds</source>
        <translation>le sérum doit encore passer la pellicule du grain : un petit grain chaud est à son point final en minutes, non en secondes</translation>
    </message>
    <message>
        <source>whey pressed through a gel has a way as long as the piece is wide: its time goes by the edge squared; over the surface alone it would go by the edge</source>
        <translation>le sérum pressé à travers un gel a un chemin aussi long que le morceau est large : son temps va selon l'arête au carré ; par la seule surface, il irait selon l'arête</translation>
    </message>
    <message>
        <source>whey protein bound to casein hinders the curd in drawing together; curd of milk heated high is soft and wet (direction: from memory, high); size</source>
        <translation>les protéines solubles liées à la caséine empêchent le caillé de se contracter ; le caillé d'un lait chauffé haut est mou et humide (le sens, de mémoire, sûr) ; ordre de grandeur</translation>
    </message>
    <message>
        <source>whey protein unfolds within minutes above 80 °C, hardly below 70</source>
        <translation>les protéines du sérum se déplient en minutes au-dessus de 80 °C, à peine sous 70</translation>
    </message>
    <message>
        <source>white cheese 4-20 °C and Sbrinz 7-20 °C, Floury et al. 2010</source>
        <translation>fromage blanc en saumure 4-20 °C et Sbrinz 7-20 °C, Floury et al. 2010</translation>
    </message>
    <message>
        <source>whole-milk rennet gels reach about 100 Pa in an hour</source>
        <translation>les gels présure de lait entier atteignent environ 100 Pa en une heure</translation>
    </message>
    <message>
        <source>width of that change</source>
        <translation>étendue de ce changement</translation>
    </message>
    <message>
        <source>width of that step</source>
        <translation>étendue de cette marche</translation>
    </message>
    <message>
        <source>width of the gelation step</source>
        <translation>étendue de la marche de gélification</translation>
    </message>
    <message>
        <source>width of the step from milky to clear whey</source>
        <translation>étendue de la marche du sérum laiteux au clair</translation>
    </message>
    <message>
        <source>word “closed”</source>
        <translation>mot « fermé »</translation>
    </message>
</context>
<context>
    <name>stage</name>
    <message>
        <source>Acid goes into hot milk or whey and curdles it at once.</source>
        <translation>L'acide entre dans le lait ou le lactosérum chaud et le caille aussitôt.</translation>
    </message>
    <message>
        <source>Age the cheese in its room.</source>
        <translation>Affiner le fromage dans sa cave.</translation>
    </message>
    <message>
        <source>Coagulant goes in; the milk stands still until the gel is ready to cut.</source>
        <translation>Le coagulant entre ; le lait reste immobile jusqu'à ce que le gel soit bon à décailler.</translation>
    </message>
    <message>
        <source>Cool the milk to a temperature.</source>
        <translation>Refroidir le lait à une température.</translation>
    </message>
    <message>
        <source>Cut the drained bed into slabs, turn and pile them while acid comes.</source>
        <translation>Découper le gâteau égoutté en pains, les retourner et les empiler pendant que l'acide vient.</translation>
    </message>
    <message>
        <source>Cut the gel to an even size.</source>
        <translation>Décailler le gel à une taille régulière.</translation>
    </message>
    <message>
        <source>Draw whey, add water, stir on; takes lactose away so that the cheese ends sweeter.</source>
        <translation>Tirer du lactosérum, ajouter de l'eau, continuer à brasser ; retire du lactose pour un fromage plus doux (délactosage).</translation>
    </message>
    <message>
        <source>Fill the curd into its forms.</source>
        <translation>Mettre le caillé en moules.</translation>
    </message>
    <message>
        <source>Hold the milk warm with its starter until acid has begun.</source>
        <translation>Tenir le lait tiède avec son ferment jusqu'à ce que l'acide ait commencé.</translation>
    </message>
    <message>
        <source>Keep the cheese in brine to ripen.</source>
        <translation>Garder le fromage en saumure pour l'affiner.</translation>
    </message>
    <message>
        <source>Keep the curd moving in its whey.</source>
        <translation>Garder le caillé en mouvement dans son lactosérum.</translation>
    </message>
    <message>
        <source>Ladle the gel into the forms, slice by slice.</source>
        <translation>Mouler le gel à la louche, tranche par tranche.</translation>
    </message>
    <message>
        <source>Lay the cheese in brine.</source>
        <translation>Mettre le fromage en saumure.</translation>
    </message>
    <message>
        <source>Lay the pieces in hot whey or water.</source>
        <translation>Mettre les morceaux dans du lactosérum ou de l'eau chaude.</translation>
    </message>
    <message>
        <source>Leave the curd alone; its cut faces close.</source>
        <translation>Laisser le caillé tranquille ; ses faces coupées se ferment.</translation>
    </message>
    <message>
        <source>Let the curd sink and lie together under the whey.</source>
        <translation>Laisser le caillé tomber et se rassembler sous le lactosérum.</translation>
    </message>
    <message>
        <source>Let the faces dry.</source>
        <translation>Laisser sécher les faces.</translation>
    </message>
    <message>
        <source>Mill the slabs into chips.</source>
        <translation>Broyer les pains en grains.</translation>
    </message>
    <message>
        <source>Press in steps, gently first: an early hard press closes the skin and keeps whey in.</source>
        <translation>Presser par paliers, d'abord doucement : une forte presse trop tôt ferme la peau et retient le lactosérum.</translation>
    </message>
    <message>
        <source>Run the whey off.</source>
        <translation>Laisser couler le lactosérum.</translation>
    </message>
    <message>
        <source>Strew salt and let it mellow.</source>
        <translation>Semer le sel et le laisser pénétrer.</translation>
    </message>
    <message>
        <source>The starter curdles the milk slowly; a little coagulant firms it.</source>
        <translation>Le ferment caille lentement le lait ; un peu de coagulant l'affermit.</translation>
    </message>
    <message>
        <source>Tie the curd in cloth and let it drip.</source>
        <translation>Nouer le caillé dans une toile et le laisser goutter.</translation>
    </message>
    <message>
        <source>Turn the cheeses in their forms.</source>
        <translation>Retourner les fromages dans leurs moules.</translation>
    </message>
    <message>
        <source>Warm the curd while stirring; the grain shrinks and firms.</source>
        <translation>Chauffer le caillé en brassant ; le grain se contracte et s'affermit.</translation>
    </message>
    <message>
        <source>Warm the milk, usually to the temperature the starter likes.</source>
        <translation>Chauffer le lait, d'ordinaire à la température qu'aime le ferment.</translation>
    </message>
    <message>
        <source>Work the ripe curd in hot water until it stretches smooth.</source>
        <translation>Travailler le caillé mûr dans l'eau chaude jusqu'à ce qu'il file, lisse.</translation>
    </message>
    <message>
        <source>acid-and-heat curdling</source>
        <translation>caillage acide-chaleur</translation>
    </message>
    <message>
        <source>age</source>
        <translation>affinage</translation>
    </message>
    <message>
        <source>at {room_c}</source>
        <translation>à {room_c}</translation>
    </message>
    <message>
        <source>at {temperature_c}</source>
        <translation>à {temperature_c}</translation>
    </message>
    <message>
        <source>brine</source>
        <translation>saumure</translation>
    </message>
    <message>
        <source>bring to temperature</source>
        <translation>mise à température</translation>
    </message>
    <message>
        <source>cook</source>
        <translation>chauffage en brassant</translation>
    </message>
    <message>
        <source>cool</source>
        <translation>refroidissement</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>décaillage</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>égouttage</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>séchage</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>séchage</translation>
    </message>
    <message>
        <source>evenly and quickly</source>
        <translation>régulièrement et vite</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>moulage</translation>
    </message>
    <message>
        <source>fill forms</source>
        <translation>moulage</translation>
    </message>
    <message>
        <source>hang in cloth</source>
        <translation>suspension en toile</translation>
    </message>
    <message>
        <source>heal</source>
        <translation>repos</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>chauffage</translation>
    </message>
    <message>
        <source>hold in brine</source>
        <translation>garde en saumure</translation>
    </message>
    <message>
        <source>hold {temperature_c}</source>
        <translation>tenir {temperature_c}</translation>
    </message>
    <message>
        <source>in brine of {strength_pct} and {brine_c}</source>
        <translation>en saumure à {strength_pct} et {brine_c}</translation>
    </message>
    <message>
        <source>in water of {water_c}</source>
        <translation>dans de l'eau à {water_c}</translation>
    </message>
    <message>
        <source>in whey or water of {bath_c}</source>
        <translation>dans du lactosérum ou de l'eau à {bath_c}</translation>
    </message>
    <message>
        <source>keep at {temperature_c}</source>
        <translation>tenir à {temperature_c}</translation>
    </message>
    <message>
        <source>keep in brine</source>
        <translation>garde en saumure</translation>
    </message>
    <message>
        <source>keep still</source>
        <translation>ne pas remuer</translation>
    </message>
    <message>
        <source>lactic set</source>
        <translation>caillage lactique</translation>
    </message>
    <message>
        <source>ladle</source>
        <translation>moulage à la louche</translation>
    </message>
    <message>
        <source>leave it alone</source>
        <translation>laisser tranquille</translation>
    </message>
    <message>
        <source>let it drip</source>
        <translation>laisser goutter</translation>
    </message>
    <message>
        <source>lid on</source>
        <translation>couvert</translation>
    </message>
    <message>
        <source>mill</source>
        <translation>broyage</translation>
    </message>
    <message>
        <source>over {ramp_min}</source>
        <translation>en {ramp_min}</translation>
    </message>
    <message>
        <source>press</source>
        <translation>pressage</translation>
    </message>
    <message>
        <source>pressed at {pressure_kpa}</source>
        <translation>pressé à {pressure_kpa}</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>repos</translation>
    </message>
    <message>
        <source>ripen</source>
        <translation>maturation</translation>
    </message>
    <message>
        <source>room {room_c}</source>
        <translation>local {room_c}</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>salage</translation>
    </message>
    <message>
        <source>salt curd</source>
        <translation>salage du caillé</translation>
    </message>
    <message>
        <source>salt the floating faces</source>
        <translation>saler les faces qui flottent</translation>
    </message>
    <message>
        <source>scald</source>
        <translation>échaudage</translation>
    </message>
    <message>
        <source>set</source>
        <translation>caillage</translation>
    </message>
    <message>
        <source>settle</source>
        <translation>dépôt sous lactosérum</translation>
    </message>
    <message>
        <source>slices of {cut_mm} into the forms</source>
        <translation>tranches de {cut_mm} dans les moules</translation>
    </message>
    <message>
        <source>so that the curd just keeps floating</source>
        <translation>pour que le caillé reste juste en suspension</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>cheddarisation</translation>
    </message>
    <message>
        <source>stand and turn</source>
        <translation>retournement</translation>
    </message>
    <message>
        <source>stir</source>
        <translation>brassage</translation>
    </message>
    <message>
        <source>stir and cook</source>
        <translation>brassage et chauffage</translation>
    </message>
    <message>
        <source>stir gently</source>
        <translation>brasser doucement</translation>
    </message>
    <message>
        <source>stir in 1 min, then still</source>
        <translation>brasser 1 min, puis immobile</translation>
    </message>
    <message>
        <source>stir the acid in slowly until the whey is clear</source>
        <translation>verser l'acide lentement en brassant jusqu'à lactosérum clair</translation>
    </message>
    <message>
        <source>stretch</source>
        <translation>filage</translation>
    </message>
    <message>
        <source>strewn evenly</source>
        <translation>répartir régulièrement</translation>
    </message>
    <message>
        <source>to {cut_mm}</source>
        <translation>à {cut_mm}</translation>
    </message>
    <message>
        <source>to {temperature_c}</source>
        <translation>à {temperature_c}</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>retournement</translation>
    </message>
    <message>
        <source>turn every {turn_min}</source>
        <translation>retourner toutes les {turn_min}</translation>
    </message>
    <message>
        <source>turned</source>
        <translation>retourné</translation>
    </message>
    <message>
        <source>under brine of {strength_pct} and {brine_c}</source>
        <translation>sous saumure à {strength_pct} et {brine_c}</translation>
    </message>
    <message>
        <source>under the whey</source>
        <translation>sous le lactosérum</translation>
    </message>
    <message>
        <source>until it shines and pulls long</source>
        <translation>jusqu'à ce qu'il brille et file long</translation>
    </message>
    <message>
        <source>wash</source>
        <translation>lavage</translation>
    </message>
    <message>
        <source>wash curd</source>
        <translation>délactosage</translation>
    </message>
    <message>
        <source>water at {water_c}</source>
        <translation>eau à {water_c}</translation>
    </message>
    <message>
        <source>{humidity_pct} humidity</source>
        <translation>{humidity_pct} d'humidité</translation>
    </message>
    <message>
        <source>{salt_pct} of the {of}</source>
        <translation>{salt_pct} ({of})</translation>
    </message>
    <message>
        <source>{salt_pct} salt in it</source>
        <translation>salée à {salt_pct}</translation>
    </message>
    <message>
        <source>{whey_off_pct} of the whey off</source>
        <translation>{whey_off_pct} du lactosérum tiré</translation>
    </message>
</context>
<context>
    <name>state</name>
    <message>
        <source>met</source>
        <translation>respecté</translation>
    </message>
    <message>
        <source>near</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>non respecté</translation>
    </message>
</context>
<context>
    <name>style</name>
    <message>
        <source>Alpine hard cheese</source>
        <translation>Fromage d'alpage à pâte dure</translation>
    </message>
    <message>
        <source>Asiago</source>
        <translation>Asiago</translation>
    </message>
    <message>
        <source>Asiago, fresh</source>
        <translation>Asiago frais</translation>
    </message>
    <message>
        <source>Blue</source>
        <translation>Bleu</translation>
    </message>
    <message>
        <source>Brick</source>
        <translation>Brick</translation>
    </message>
    <message>
        <source>Brie</source>
        <translation>Brie</translation>
    </message>
    <message>
        <source>Butterkäse</source>
        <translation>Butterkäse</translation>
    </message>
    <message>
        <source>Caciocavallo</source>
        <translation>Caciocavallo</translation>
    </message>
    <message>
        <source>Caerphilly</source>
        <translation>Caerphilly</translation>
    </message>
    <message>
        <source>Camembert</source>
        <translation>Camembert</translation>
    </message>
    <message>
        <source>Cantal</source>
        <translation>Cantal</translation>
    </message>
    <message>
        <source>Chabichou</source>
        <translation>Chabichou</translation>
    </message>
    <message>
        <source>Cheddar</source>
        <translation>Cheddar</translation>
    </message>
    <message>
        <source>Cheshire</source>
        <translation>Cheshire</translation>
    </message>
    <message>
        <source>Colby</source>
        <translation>Colby</translation>
    </message>
    <message>
        <source>Comté</source>
        <translation>Comté</translation>
    </message>
    <message>
        <source>Cottage cheese</source>
        <translation>Cottage cheese</translation>
    </message>
    <message>
        <source>Coulommiers</source>
        <translation>Coulommiers</translation>
    </message>
    <message>
        <source>Cream cheese</source>
        <translation>Fromage à la crème</translation>
    </message>
    <message>
        <source>Crottin</source>
        <translation>Crottin</translation>
    </message>
    <message>
        <source>Danbo</source>
        <translation>Danbo</translation>
    </message>
    <message>
        <source>Double Gloucester</source>
        <translation>Double Gloucester</translation>
    </message>
    <message>
        <source>Edam</source>
        <translation>Édam</translation>
    </message>
    <message>
        <source>Emmental</source>
        <translation>Emmental</translation>
    </message>
    <message>
        <source>Feta</source>
        <translation>Feta</translation>
    </message>
    <message>
        <source>Fontina</source>
        <translation>Fontina</translation>
    </message>
    <message>
        <source>Gorgonzola</source>
        <translation>Gorgonzola</translation>
    </message>
    <message>
        <source>Gouda</source>
        <translation>Gouda</translation>
    </message>
    <message>
        <source>Gruyère</source>
        <translation>Gruyère</translation>
    </message>
    <message>
        <source>Halloumi</source>
        <translation>Halloumi</translation>
    </message>
    <message>
        <source>Havarti</source>
        <translation>Havarti</translation>
    </message>
    <message>
        <source>Lancashire</source>
        <translation>Lancashire</translation>
    </message>
    <message>
        <source>Limburger</source>
        <translation>Limburger</translation>
    </message>
    <message>
        <source>Manchego</source>
        <translation>Manchego</translation>
    </message>
    <message>
        <source>Mimolette</source>
        <translation>Mimolette</translation>
    </message>
    <message>
        <source>Monterey</source>
        <translation>Monterey</translation>
    </message>
    <message>
        <source>Mozzarella</source>
        <translation>Mozzarella</translation>
    </message>
    <message>
        <source>Mozzarella, low moisture</source>
        <translation>Mozzarella peu humide</translation>
    </message>
    <message>
        <source>Mozzarella, low moisture, part skim</source>
        <translation>Mozzarella peu humide, demi-écrémée</translation>
    </message>
    <message>
        <source>Mozzarella, part skim</source>
        <translation>Mozzarella demi-écrémée</translation>
    </message>
    <message>
        <source>Muenster (US)</source>
        <translation>Muenster (États-Unis)</translation>
    </message>
    <message>
        <source>Munster</source>
        <translation>Munster</translation>
    </message>
    <message>
        <source>Neufchatel (US)</source>
        <translation>Neufchâtel (États-Unis)</translation>
    </message>
    <message>
        <source>Parmesan</source>
        <translation>Parmesan</translation>
    </message>
    <message>
        <source>Pecorino</source>
        <translation>Pecorino</translation>
    </message>
    <message>
        <source>Provolone</source>
        <translation>Provolone</translation>
    </message>
    <message>
        <source>Quark</source>
        <translation>Quark</translation>
    </message>
    <message>
        <source>Queso blanco</source>
        <translation>Queso blanco</translation>
    </message>
    <message>
        <source>Queso fresco</source>
        <translation>Queso fresco</translation>
    </message>
    <message>
        <source>Raclette</source>
        <translation>Raclette</translation>
    </message>
    <message>
        <source>Reblochon type</source>
        <translation>type Reblochon</translation>
    </message>
    <message>
        <source>Ricotta</source>
        <translation>Ricotta</translation>
    </message>
    <message>
        <source>Romano</source>
        <translation>Romano</translation>
    </message>
    <message>
        <source>Roquefort type</source>
        <translation>type Roquefort</translation>
    </message>
    <message>
        <source>Saint-Paulin</source>
        <translation>Saint-Paulin</translation>
    </message>
    <message>
        <source>Sainte-Maure</source>
        <translation>Sainte-Maure</translation>
    </message>
    <message>
        <source>Samsø</source>
        <translation>Samsø</translation>
    </message>
    <message>
        <source>Stilton</source>
        <translation>Stilton</translation>
    </message>
    <message>
        <source>Swiss</source>
        <translation>Emmental américain</translation>
    </message>
    <message>
        <source>Taleggio</source>
        <translation>Taleggio</translation>
    </message>
    <message>
        <source>Tilsit</source>
        <translation>Tilsit</translation>
    </message>
    <message>
        <source>Wensleydale</source>
        <translation>Wensleydale</translation>
    </message>
    <message>
        <source>White brined</source>
        <translation>Fromage blanc en saumure</translation>
    </message>
    <message>
        <source>acid, milled and salted, lightly pressed</source>
        <translation>acide, broyé et salé, peu pressé</translation>
    </message>
    <message>
        <source>acid, salty, clean</source>
        <translation>acide, salé, net</translation>
    </message>
    <message>
        <source>acid, salty, sheepy</source>
        <translation>acide, salé, de brebis</translation>
    </message>
    <message>
        <source>blue mould inside</source>
        <translation>pâte persillée</translation>
    </message>
    <message>
        <source>cave</source>
        <translation>cave</translation>
    </message>
    <message>
        <source>cellar</source>
        <translation>cave</translation>
    </message>
    <message>
        <source>clean, mild, lightly acid</source>
        <translation>net, doux, légèrement acide</translation>
    </message>
    <message>
        <source>clean, mild, may be undeveloped</source>
        <translation>net, doux, parfois peu développé</translation>
    </message>
    <message>
        <source>clean, mildly salty, nutty; stronger with age</source>
        <translation>net, légèrement salé, de noix ; plus fort avec l'âge</translation>
    </message>
    <message>
        <source>clean, rounded, savoury</source>
        <translation>net, rond, savoureux</translation>
    </message>
    <message>
        <source>cloth-bound, cellar</source>
        <translation>en toile, cave</translation>
    </message>
    <message>
        <source>cold cellar</source>
        <translation>cave froide</translation>
    </message>
    <message>
        <source>cold room</source>
        <translation>chambre froide</translation>
    </message>
    <message>
        <source>cold store</source>
        <translation>réserve froide</translation>
    </message>
    <message>
        <source>cold, wrapped</source>
        <translation>au froid, emballé</translation>
    </message>
    <message>
        <source>compact, sliceable, slightly brittle</source>
        <translation>compact, se tranche, un peu cassant</translation>
    </message>
    <message>
        <source>cooked, brined</source>
        <translation>cuit, en saumure</translation>
    </message>
    <message>
        <source>cooked, eyed, brined</source>
        <translation>cuit, à ouvertures, en saumure</translation>
    </message>
    <message>
        <source>cooked, natural or smeared rind</source>
        <translation>cuit, croûte naturelle ou morgée</translation>
    </message>
    <message>
        <source>cooked, smeared</source>
        <translation>cuit, morgé</translation>
    </message>
    <message>
        <source>cool cellar</source>
        <translation>cave fraîche</translation>
    </message>
    <message>
        <source>cool room</source>
        <translation>local frais</translation>
    </message>
    <message>
        <source>creamy white with blue-green veins, no gas holes</source>
        <translation>blanc crème à veines bleu-vert, sans trous de gaz</translation>
    </message>
    <message>
        <source>crumbly, soft</source>
        <translation>friable, mou</translation>
    </message>
    <message>
        <source>drying room</source>
        <translation>séchoir</translation>
    </message>
    <message>
        <source>elastic, layered, juicy when fresh</source>
        <translation>élastique, feuilleté, juteux quand il est frais</translation>
    </message>
    <message>
        <source>even colour, near white to orange; no gas holes, few openings</source>
        <translation>couleur régulière, presque blanc à orangé ; sans trous de gaz, peu d'ouvertures</translation>
    </message>
    <message>
        <source>extra hard, grating</source>
        <translation>extra-dur, à râper</translation>
    </message>
    <message>
        <source>fine, firm</source>
        <translation>fin, ferme</translation>
    </message>
    <message>
        <source>fine, firm when dried</source>
        <translation>fin, ferme une fois sec</translation>
    </message>
    <message>
        <source>fine, moist, firming</source>
        <translation>fin, humide, qui s'affermit</translation>
    </message>
    <message>
        <source>firm to granular</source>
        <translation>ferme à granuleux</translation>
    </message>
    <message>
        <source>firm to hard</source>
        <translation>ferme à dur</translation>
    </message>
    <message>
        <source>firm, close, a little grainy</source>
        <translation>ferme, serré, un peu grenu</translation>
    </message>
    <message>
        <source>firm, crumbly, flaky</source>
        <translation>ferme, friable, en écailles</translation>
    </message>
    <message>
        <source>firm, elastic</source>
        <translation>ferme, élastique</translation>
    </message>
    <message>
        <source>firm, elastic, layered</source>
        <translation>ferme, élastique, feuilleté</translation>
    </message>
    <message>
        <source>firm, layered</source>
        <translation>ferme, feuilleté</translation>
    </message>
    <message>
        <source>firm, pliable</source>
        <translation>ferme, souple</translation>
    </message>
    <message>
        <source>firm, pliable, smooth</source>
        <translation>ferme, souple, lisse</translation>
    </message>
    <message>
        <source>firm, sliceable, holds when fried</source>
        <translation>ferme, se tranche, tient à la poêle</translation>
    </message>
    <message>
        <source>firm, smooth</source>
        <translation>ferme, lisse</translation>
    </message>
    <message>
        <source>firm, smooth, melts on the tongue</source>
        <translation>ferme, lisse, fondant en bouche</translation>
    </message>
    <message>
        <source>firm, smooth, silky</source>
        <translation>ferme, lisse, soyeux</translation>
    </message>
    <message>
        <source>firm, smooth, waxy when rubbed, close</source>
        <translation>ferme, lisse, cireux sous le doigt, serré</translation>
    </message>
    <message>
        <source>firm, squeaky, holds when fried</source>
        <translation>ferme, crisse sous la dent, tient à la poêle</translation>
    </message>
    <message>
        <source>first room</source>
        <translation>première cave</translation>
    </message>
    <message>
        <source>fresh, acid</source>
        <translation>frais, acide</translation>
    </message>
    <message>
        <source>fresh, acid and heat</source>
        <translation>frais, acide et chaleur</translation>
    </message>
    <message>
        <source>fresh, acid, cooked</source>
        <translation>frais, acide, cuit</translation>
    </message>
    <message>
        <source>fresh, acid, creamy</source>
        <translation>frais, acide, crémeux</translation>
    </message>
    <message>
        <source>fresh, acid, rich</source>
        <translation>frais, acide, riche</translation>
    </message>
    <message>
        <source>fresh, lactic, goaty with age</source>
        <translation>frais, lactique, de chèvre avec l'âge</translation>
    </message>
    <message>
        <source>fresh, lactic, mild</source>
        <translation>frais, lactique, doux</translation>
    </message>
    <message>
        <source>fresh, mild</source>
        <translation>frais, doux</translation>
    </message>
    <message>
        <source>fresh, rennet</source>
        <translation>frais, à la présure</translation>
    </message>
    <message>
        <source>fruity, milky, roasted, plant, animal, spicy</source>
        <translation>fruité, lacté, torréfié, végétal, animal, épicé</translation>
    </message>
    <message>
        <source>fruity, milky, roasted, savoury; fuller with age</source>
        <translation>fruité, lacté, torréfié, savoureux ; plus plein avec l'âge</translation>
    </message>
    <message>
        <source>fruity, nutty, savoury</source>
        <translation>fruité, de noix, savoureux</translation>
    </message>
    <message>
        <source>granular, grates readily</source>
        <translation>granuleux, se râpe bien</translation>
    </message>
    <message>
        <source>hard, granular with age</source>
        <translation>dur, granuleux avec l'âge</translation>
    </message>
    <message>
        <source>in brine, cold</source>
        <translation>en saumure, au froid</translation>
    </message>
    <message>
        <source>in brine, first</source>
        <translation>en saumure, d'abord</translation>
    </message>
    <message>
        <source>ivory to pale yellow, eyes cherry to walnut size, round and glossy</source>
        <translation>ivoire à jaune pâle, ouvertures de la cerise à la noix, rondes et brillantes</translation>
    </message>
    <message>
        <source>ivory to straw, few holes, thin rind</source>
        <translation>ivoire à paille, peu de trous, croûte fine</translation>
    </message>
    <message>
        <source>ivory to straw, thin rind</source>
        <translation>ivoire à paille, croûte fine</translation>
    </message>
    <message>
        <source>ivory to yellow, few round eyes</source>
        <translation>ivoire à jaune, peu d'ouvertures rondes</translation>
    </message>
    <message>
        <source>ivory to yellow, openings none or up to a small cherry</source>
        <translation>ivoire à jaune, sans ouvertures ou jusqu'à la petite cerise</translation>
    </message>
    <message>
        <source>ivory to yellow, openings up to a small cherry</source>
        <translation>ivoire à jaune, ouvertures jusqu'à la petite cerise</translation>
    </message>
    <message>
        <source>ivory with blue-green veins along needle holes</source>
        <translation>ivoire à veines bleu-vert le long des piqûres</translation>
    </message>
    <message>
        <source>ivory, few eyes of pea size, smeared rind</source>
        <translation>ivoire, peu d'ouvertures de la taille d'un pois, croûte morgée</translation>
    </message>
    <message>
        <source>ivory, few openings, pink to white rind</source>
        <translation>ivoire, peu d'ouvertures, croûte rose à blanche</translation>
    </message>
    <message>
        <source>ivory, few small eyes</source>
        <translation>ivoire, peu de petites ouvertures</translation>
    </message>
    <message>
        <source>ivory, many small slits</source>
        <translation>ivoire, beaucoup de petites fentes</translation>
    </message>
    <message>
        <source>ivory, orange smear</source>
        <translation>ivoire, morge orangée</translation>
    </message>
    <message>
        <source>ivory, small irregular openings, light smear</source>
        <translation>ivoire, petites ouvertures irrégulières, légère morge</translation>
    </message>
    <message>
        <source>ivory, thick dry rind</source>
        <translation>ivoire, croûte sèche et épaisse</translation>
    </message>
    <message>
        <source>lactic, buttery</source>
        <translation>lactique, beurré</translation>
    </message>
    <message>
        <source>lactic, goat</source>
        <translation>lactique, chèvre</translation>
    </message>
    <message>
        <source>lactic, goaty, nutty</source>
        <translation>lactique, de chèvre, de noix</translation>
    </message>
    <message>
        <source>lactic, hazelnut, goaty</source>
        <translation>lactique, de noisette, de chèvre</translation>
    </message>
    <message>
        <source>low elasticity, buttery, slightly floury</source>
        <translation>peu élastique, beurré, un peu farineux</translation>
    </message>
    <message>
        <source>mellow, savoury</source>
        <translation>moelleux, savoureux</translation>
    </message>
    <message>
        <source>mild</source>
        <translation>doux</translation>
    </message>
    <message>
        <source>mild and sweet to piquant</source>
        <translation>doux à piquant</translation>
    </message>
    <message>
        <source>mild and sweet to savoury</source>
        <translation>doux à savoureux</translation>
    </message>
    <message>
        <source>mild to piquant</source>
        <translation>doux à piquant</translation>
    </message>
    <message>
        <source>mild, buttery</source>
        <translation>doux, beurré</translation>
    </message>
    <message>
        <source>mild, buttery, lightly acid</source>
        <translation>doux, beurré, légèrement acide</translation>
    </message>
    <message>
        <source>mild, buttery, lightly acid; fuller with a smeared rind</source>
        <translation>doux, beurré, légèrement acide ; plus plein avec une croûte morgée</translation>
    </message>
    <message>
        <source>mild, buttery, sweet; nutty with age</source>
        <translation>doux, beurré, sucré ; de noix avec l'âge</translation>
    </message>
    <message>
        <source>mild, clean, lightly salty</source>
        <translation>doux, net, légèrement salé</translation>
    </message>
    <message>
        <source>mild, lactic, honeyed</source>
        <translation>doux, lactique, miellé</translation>
    </message>
    <message>
        <source>mild, milky</source>
        <translation>doux, lacté</translation>
    </message>
    <message>
        <source>mild, nutty</source>
        <translation>doux, de noix</translation>
    </message>
    <message>
        <source>mild, tangy, savoury</source>
        <translation>doux, vif, savoureux</translation>
    </message>
    <message>
        <source>mildly acid to mushroom</source>
        <translation>légèrement acide à champignon</translation>
    </message>
    <message>
        <source>mildly acid to mushroom and cream</source>
        <translation>légèrement acide à champignon et crème</translation>
    </message>
    <message>
        <source>mildly acid when young, mushroom and cream when ripe</source>
        <translation>légèrement acide jeune, champignon et crème à maturité</translation>
    </message>
    <message>
        <source>milky to savoury</source>
        <translation>lacté à savoureux</translation>
    </message>
    <message>
        <source>milky, mildly acid</source>
        <translation>lacté, légèrement acide</translation>
    </message>
    <message>
        <source>milky, nutty</source>
        <translation>lacté, de noix</translation>
    </message>
    <message>
        <source>milky, nutty, tangy with age</source>
        <translation>lacté, de noix, vif avec l'âge</translation>
    </message>
    <message>
        <source>milky, salty</source>
        <translation>lacté, salé</translation>
    </message>
    <message>
        <source>milky, salty, mint if added</source>
        <translation>lacté, salé, menthe si ajoutée</translation>
    </message>
    <message>
        <source>milky, sweet</source>
        <translation>lacté, sucré</translation>
    </message>
    <message>
        <source>milled and dry-salted, pressed</source>
        <translation>broyé et salé à sec, pressé</translation>
    </message>
    <message>
        <source>milled and dry-salted, unpressed, blue mould</source>
        <translation>broyé et salé à sec, non pressé, persillé</translation>
    </message>
    <message>
        <source>milled and salted, pressed twice</source>
        <translation>broyé et salé, pressé deux fois</translation>
    </message>
    <message>
        <source>moist, crumbly, flaky</source>
        <translation>humide, friable, en écailles</translation>
    </message>
    <message>
        <source>moist, crumbly, melting</source>
        <translation>humide, friable, fondant</translation>
    </message>
    <message>
        <source>moist, flaky</source>
        <translation>humide, en écailles</translation>
    </message>
    <message>
        <source>nutty, savoury, sweet</source>
        <translation>de noix, savoureux, doux</translation>
    </message>
    <message>
        <source>nutty, sweet</source>
        <translation>de noix, doux</translation>
    </message>
    <message>
        <source>orange, few small eyes, pitted crust</source>
        <translation>orangé, peu de petites ouvertures, croûte piquetée</translation>
    </message>
    <message>
        <source>pale, closed</source>
        <translation>pâle, fermé</translation>
    </message>
    <message>
        <source>pale, closed, orange thin rind</source>
        <translation>pâle, fermé, fine croûte orangée</translation>
    </message>
    <message>
        <source>pale, few round eyes</source>
        <translation>pâle, peu d'ouvertures rondes</translation>
    </message>
    <message>
        <source>pale, many small irregular openings</source>
        <translation>pâle, beaucoup de petites ouvertures irrégulières</translation>
    </message>
    <message>
        <source>pale, round glossy eyes throughout</source>
        <translation>pâle, ouvertures rondes et brillantes partout</translation>
    </message>
    <message>
        <source>pliable, sliceable</source>
        <translation>souple, se tranche</translation>
    </message>
    <message>
        <source>pliable, smooth</source>
        <translation>souple, lisse</translation>
    </message>
    <message>
        <source>pressed, brined</source>
        <translation>pressé, en saumure</translation>
    </message>
    <message>
        <source>reasonably firm, may be curdy, partly broken down after three weeks</source>
        <translation>assez ferme, parfois caillebotté, en partie affiné après trois semaines</translation>
    </message>
    <message>
        <source>reasonably firm, may be curdy, smooth when warm</source>
        <translation>assez ferme, parfois caillebotté, lisse à chaud</translation>
    </message>
    <message>
        <source>ripening</source>
        <translation>affinage</translation>
    </message>
    <message>
        <source>salty, piquant, sheepy</source>
        <translation>salé, piquant, de brebis</translation>
    </message>
    <message>
        <source>salty, piquant, strong</source>
        <translation>salé, piquant, fort</translation>
    </message>
    <message>
        <source>savoury, tangy</source>
        <translation>savoureux, vif</translation>
    </message>
    <message>
        <source>scalded</source>
        <translation>échaudé</translation>
    </message>
    <message>
        <source>second room</source>
        <translation>seconde cave</translation>
    </message>
    <message>
        <source>semi-hard, brined</source>
        <translation>demi-dur, en saumure</translation>
    </message>
    <message>
        <source>semi-hard, smeared</source>
        <translation>demi-dur, morgé</translation>
    </message>
    <message>
        <source>semi-soft</source>
        <translation>demi-mou</translation>
    </message>
    <message>
        <source>semi-soft, pliable, sliceable</source>
        <translation>demi-mou, souple, se tranche</translation>
    </message>
    <message>
        <source>semi-soft, sliceable</source>
        <translation>demi-mou, se tranche</translation>
    </message>
    <message>
        <source>semi-soft, smooth</source>
        <translation>demi-mou, lisse</translation>
    </message>
    <message>
        <source>semi-soft, springy</source>
        <translation>demi-mou, élastique</translation>
    </message>
    <message>
        <source>semi-soft, supple</source>
        <translation>demi-mou, souple</translation>
    </message>
    <message>
        <source>sharp, salty, piquant</source>
        <translation>fort, salé, piquant</translation>
    </message>
    <message>
        <source>sheep, hard</source>
        <translation>brebis, dur</translation>
    </message>
    <message>
        <source>sheep, pressed</source>
        <translation>brebis, pressé</translation>
    </message>
    <message>
        <source>sheepy, savoury to piquant</source>
        <translation>de brebis, savoureux à piquant</translation>
    </message>
    <message>
        <source>slightly acid, savoury, piquant with age</source>
        <translation>légèrement acide, savoureux, piquant avec l'âge</translation>
    </message>
    <message>
        <source>small even mechanical openings or closed; no gas holes</source>
        <translation>petites ouvertures mécaniques régulières ou fermé ; sans trous de gaz</translation>
    </message>
    <message>
        <source>smear cellar</source>
        <translation>cave à morge</translation>
    </message>
    <message>
        <source>smear room</source>
        <translation>cave à morge</translation>
    </message>
    <message>
        <source>smooth, firm, melts evenly</source>
        <translation>lisse, ferme, fond régulièrement</translation>
    </message>
    <message>
        <source>soft to crumbly, open</source>
        <translation>mou à friable, ouvert</translation>
    </message>
    <message>
        <source>soft, creamy to crumbly</source>
        <translation>mou, crémeux à friable</translation>
    </message>
    <message>
        <source>soft, creamy under the rind</source>
        <translation>mou, crémeux sous la croûte</translation>
    </message>
    <message>
        <source>soft, crumbly, buttery</source>
        <translation>mou, friable, beurré</translation>
    </message>
    <message>
        <source>soft, melting under the rind</source>
        <translation>mou, fondant sous la croûte</translation>
    </message>
    <message>
        <source>soft, moist</source>
        <translation>mou, humide</translation>
    </message>
    <message>
        <source>soft, not crumbly, ripening from the surface</source>
        <translation>mou, non friable, s'affinant de la surface</translation>
    </message>
    <message>
        <source>soft, not crumbly, ripening from the surface to the centre</source>
        <translation>mou, non friable, s'affinant de la surface vers le cœur</translation>
    </message>
    <message>
        <source>soft, ripening from the surface</source>
        <translation>mou, s'affinant de la surface</translation>
    </message>
    <message>
        <source>soft, ripening inwards</source>
        <translation>mou, s'affinant vers le cœur</translation>
    </message>
    <message>
        <source>soft, smeared</source>
        <translation>mou, morgé</translation>
    </message>
    <message>
        <source>soft, spreadable</source>
        <translation>mou, à tartiner</translation>
    </message>
    <message>
        <source>soft, supple</source>
        <translation>mou, souple</translation>
    </message>
    <message>
        <source>soft, washed rind</source>
        <translation>pâte molle, croûte lavée</translation>
    </message>
    <message>
        <source>soft, white mould</source>
        <translation>pâte molle, croûte fleurie</translation>
    </message>
    <message>
        <source>spreadable, smooth</source>
        <translation>à tartiner, lisse</translation>
    </message>
    <message>
        <source>store</source>
        <translation>réserve</translation>
    </message>
    <message>
        <source>straw to amber, small openings</source>
        <translation>paille à ambre, petites ouvertures</translation>
    </message>
    <message>
        <source>straw to orange, close</source>
        <translation>paille à orangé, serré</translation>
    </message>
    <message>
        <source>straw yellow, few round eyes, smooth rind or coated</source>
        <translation>jaune paille, peu d'ouvertures rondes, croûte lisse ou enrobée</translation>
    </message>
    <message>
        <source>straw, hard brittle rind, few tiny holes</source>
        <translation>paille, croûte dure et cassante, peu de trous minuscules</translation>
    </message>
    <message>
        <source>straw, many small openings</source>
        <translation>paille, beaucoup de petites ouvertures</translation>
    </message>
    <message>
        <source>straw, reddish smear</source>
        <translation>paille, morge rougeâtre</translation>
    </message>
    <message>
        <source>stretched</source>
        <translation>pâte filée</translation>
    </message>
    <message>
        <source>stretched, fresh</source>
        <translation>pâte filée, frais</translation>
    </message>
    <message>
        <source>strong, meaty</source>
        <translation>fort, de viande</translation>
    </message>
    <message>
        <source>strong, savoury</source>
        <translation>fort, savoureux</translation>
    </message>
    <message>
        <source>supple, melting</source>
        <translation>souple, fondant</translation>
    </message>
    <message>
        <source>sweet to sharp</source>
        <translation>doux à vif</translation>
    </message>
    <message>
        <source>sweet, milky</source>
        <translation>doux, lacté</translation>
    </message>
    <message>
        <source>sweet, nutty</source>
        <translation>doux, de noix</translation>
    </message>
    <message>
        <source>tender, distinct grains</source>
        <translation>grains tendres et distincts</translation>
    </message>
    <message>
        <source>velvety or flaky, open</source>
        <translation>velouté ou en écailles, ouvert</translation>
    </message>
    <message>
        <source>warm cellar</source>
        <translation>cave chaude</translation>
    </message>
    <message>
        <source>warm room</source>
        <translation>local chaud</translation>
    </message>
    <message>
        <source>washed curd, pressed, brined</source>
        <translation>caillé lavé, pressé, en saumure</translation>
    </message>
    <message>
        <source>washed curd, semi-soft</source>
        <translation>caillé lavé, demi-mou</translation>
    </message>
    <message>
        <source>washed curd, semi-soft, brined</source>
        <translation>caillé lavé, demi-mou, en saumure</translation>
    </message>
    <message>
        <source>washed curd, smeared</source>
        <translation>caillé lavé, morgé</translation>
    </message>
    <message>
        <source>washed, stirred curd, dry-salted, pressed</source>
        <translation>caillé lavé et brassé, salé à sec, pressé</translation>
    </message>
    <message>
        <source>white grains in cream</source>
        <translation>grains blancs dans la crème</translation>
    </message>
    <message>
        <source>white inside, orange coat, small openings</source>
        <translation>blanc dedans, enrobage orange, petites ouvertures</translation>
    </message>
    <message>
        <source>white log, ash or mould rind</source>
        <translation>bûche blanche, croûte cendrée ou fleurie</translation>
    </message>
    <message>
        <source>white mould all over</source>
        <translation>moisissure blanche partout</translation>
    </message>
    <message>
        <source>white mould all over, some red or brown spots</source>
        <translation>moisissure blanche partout, quelques taches rouges ou brunes</translation>
    </message>
    <message>
        <source>white mould all over, some red or brown spots; gas holes normally absent</source>
        <translation>moisissure blanche partout, quelques taches rouges ou brunes ; d'ordinaire sans trous de gaz</translation>
    </message>
    <message>
        <source>white or coloured, close</source>
        <translation>blanc ou coloré, serré</translation>
    </message>
    <message>
        <source>white to ivory, small even mechanical openings or closed; no gas holes</source>
        <translation>blanc à ivoire, petites ouvertures mécaniques régulières ou fermé ; sans trous de gaz</translation>
    </message>
    <message>
        <source>white to ivory, small uneven eyes or none</source>
        <translation>blanc à ivoire, petites ouvertures irrégulières ou aucune</translation>
    </message>
    <message>
        <source>white to straw with blue-green veins</source>
        <translation>blanc à paille à veines bleu-vert</translation>
    </message>
    <message>
        <source>white to straw, few openings, smeared rind</source>
        <translation>blanc à paille, peu d'ouvertures, croûte morgée</translation>
    </message>
    <message>
        <source>white to straw, hard rind</source>
        <translation>blanc à paille, croûte dure</translation>
    </message>
    <message>
        <source>white to straw, pink smear</source>
        <translation>blanc à paille, morge rose</translation>
    </message>
    <message>
        <source>white to yellowish, no rind, no or few openings</source>
        <translation>blanc à jaunâtre, sans croûte, peu ou pas d'ouvertures</translation>
    </message>
    <message>
        <source>white with blue-green veins</source>
        <translation>blanc à veines bleu-vert</translation>
    </message>
    <message>
        <source>white, brined</source>
        <translation>blanc, en saumure</translation>
    </message>
    <message>
        <source>white, closed</source>
        <translation>blanc, fermé</translation>
    </message>
    <message>
        <source>white, closed, folded</source>
        <translation>blanc, fermé, plié</translation>
    </message>
    <message>
        <source>white, fine curds</source>
        <translation>blanc, grains fins</translation>
    </message>
    <message>
        <source>white, flaky</source>
        <translation>blanc, en écailles</translation>
    </message>
    <message>
        <source>white, natural or light mould rind</source>
        <translation>blanc, croûte naturelle ou légèrement fleurie</translation>
    </message>
    <message>
        <source>white, no rind, few openings</source>
        <translation>blanc, sans croûte, peu d'ouvertures</translation>
    </message>
    <message>
        <source>white, open</source>
        <translation>blanc, ouvert</translation>
    </message>
    <message>
        <source>white, smooth</source>
        <translation>blanc, lisse</translation>
    </message>
    <message>
        <source>white, smooth, shiny skin</source>
        <translation>blanc, peau lisse et brillante</translation>
    </message>
    <message>
        <source>white, thin floury rind</source>
        <translation>blanc, fine croûte farineuse</translation>
    </message>
    <message>
        <source>white, wrinkled rind</source>
        <translation>blanc, croûte ridée</translation>
    </message>
    <message>
        <source>yellow, few eyes of pea to cherry size</source>
        <translation>jaune, peu d'ouvertures du pois à la cerise</translation>
    </message>
</context>
<context>
    <name>teach</name>
    <message>
        <source>A large cheese stays warm longer and takes salt more slowly than a small one.</source>
        <translation>Un grand fromage reste chaud plus longtemps et prend le sel plus lentement qu'un petit.</translation>
    </message>
    <message>
        <source>A soft gel shatters and loses fat and casein; a very firm one tears. Between them the multiple mostly moves the clock. On what a firmer cut does to moisture sources disagree.</source>
        <translation>Un gel mou éclate et perd matière grasse et caséine ; un gel très ferme se déchire. Entre les deux, le multiple déplace surtout l'heure. Sur ce qu'un décaillage plus ferme fait à l'humidité, les sources ne s'accordent pas.</translation>
    </message>
    <message>
        <source>A tenth of a pH shortens flocculation by about a seventh, loosens calcium before the set and brings every later pH forward. Milk kept cold sets more slowly until it has been warmed through.</source>
        <translation>Un dixième de pH raccourcit la floculation d'environ un septième, libère du calcium avant le caillage et avance tout pH suivant. Un lait gardé au froid caille plus lentement tant qu'il n'a pas été réchauffé à fond.</translation>
    </message>
    <message>
        <source>A warm room keeps the curd draining and souring after the vat; a cold one stops both.</source>
        <translation>Un local chaud fait continuer l'égouttage et l'acide après la cuve ; un froid arrête les deux.</translation>
    </message>
    <message>
        <source>Acid and pH</source>
        <translation>Acide et pH</translation>
    </message>
    <message>
        <source>Acid comes from the sugar left in the curd. It stops when that sugar is used up (a drained, dry or washed curd) or when the acid itself stops the starter (a moist curd). So the pH of the next day is set early: by how much sugar the water of the curd held when the whey left, and by how strongly the curd buffers. It decides whether the body is pliable or short, and it keeps the cheese safe.</source>
        <translation>L'acide vient du sucre resté dans le caillé. Il s'arrête quand ce sucre est épuisé (caillé égoutté, sec ou lavé) ou quand l'acide même arrête le ferment (caillé humide). Le pH du lendemain se fixe donc tôt : par le sucre que tenait l'eau du caillé au départ du lactosérum, et par le pouvoir tampon du caillé. Il décide si le corps est souple ou court, et il protège le fromage.</translation>
    </message>
    <message>
        <source>Acid loosens calcium from the casein, and what is loose leaves with the whey. What counts is therefore the pH while the whey leaves: sweet draining keeps calcium and gives an elastic body, sour draining loses it and gives a short, crumbling one. After draining no more can leave.</source>
        <translation>L'acide détache le calcium de la caséine, et ce qui est détaché part avec le lactosérum. C'est donc le pH pendant que le lactosérum part qui compte : un égouttage doux garde le calcium et donne un corps élastique, un acide le perd et donne un corps court et friable. Après l'égouttage, il n'en part plus.</translation>
    </message>
    <message>
        <source>Acid made is counted as lactate; what pH that gives depends on the buffers present: casein with its calcium, and the salts of the serum. So the same acid moves the pH of whey further than that of curd.</source>
        <translation>L'acide formé se compte en lactate ; le pH qu'il donne dépend des tampons présents : la caséine avec son calcium, et les sels du sérum. Le même acide déplace donc plus le pH du lactosérum que celui du caillé.</translation>
    </message>
    <message>
        <source>Calcium is the mortar between the casein bricks: whey that leaves sour takes it along, and the cheese gets shorter and softer to melt.</source>
        <translation>Le calcium est le mortier entre les briques de caséine : un lactosérum qui part acide l'emporte, et le fromage devient plus court et fond plus mollement.</translation>
    </message>
    <message>
        <source>Casein builds the net that holds everything; more of it means more cheese and a firmer set.</source>
        <translation>La caséine bâtit le filet qui tient tout ; plus il y en a, plus il y a de fromage et plus le caillage est ferme.</translation>
    </message>
    <message>
        <source>Casein sets the yield, the firmness of the gel, and how strongly the curd holds its pH. With more casein against the same fat, fat in dry matter falls.</source>
        <translation>La caséine fixe le rendement, la fermeté du gel et la force avec laquelle le caillé tient son pH. Avec plus de caséine pour la même matière grasse, le gras sur sec baisse.</translation>
    </message>
    <message>
        <source>Clotting by rennet</source>
        <translation>Coagulation par la présure</translation>
    </message>
    <message>
        <source>Curd is a net of casein that shrinks and squeezes out whey. Warmth, acid, small pieces, stirring and time all make it shrink more; so the water of a cheese is decided piece by piece from the cut to the press. What is left then hardly changes before the store. Moisture sets how firm the cheese is, how fast it ripens and how long it keeps.</source>
        <translation>Le caillé est un filet de caséine qui se contracte et chasse le lactosérum. Chaleur, acide, petits grains, brassage et temps le font tous se contracter davantage ; l'eau d'un fromage se décide donc grain par grain, du décaillage à la presse. Ce qui reste alors change à peine avant la cave. L'humidité fixe la fermeté du fromage, la vitesse de son affinage et sa garde.</translation>
    </message>
    <message>
        <source>Curd that lies still mats and drains only at the outside of the heap. Stirred pieces bump, open and give more whey; too hard too early they break and lose fat. Gentle at first, livelier once the skin holds.</source>
        <translation>Un caillé immobile se prend en masse et ne s'égoutte qu'à l'extérieur du tas. Des grains brassés se heurtent, s'ouvrent et donnent plus de lactosérum ; trop fort trop tôt, ils se brisent et perdent leur matière grasse. Doucement d'abord, plus vif une fois que la peau tient.</translation>
    </message>
    <message>
        <source>Dose of coagulant</source>
        <translation>Dose de coagulant</translation>
    </message>
    <message>
        <source>Dose of starter</source>
        <translation>Dose de ferment</translation>
    </message>
    <message>
        <source>Each degree makes the casein net contract faster, up to about 50 °C. At the same time it speeds the starter up to its best temperature, and above that slows or kills it. Heating too fast closes a skin round the pieces and locks whey in.</source>
        <translation>Chaque degré fait se contracter plus vite le filet de caséine, jusqu'à environ 50 °C. En même temps il hâte le ferment jusqu'à sa meilleure température, et au-dessus le ralentit ou le tue. Chauffer trop vite ferme une peau autour des grains et y enferme le lactosérum.</translation>
    </message>
    <message>
        <source>Fat and casein come into the cheese almost whole, so their ratio in the milk fixes fat in dry matter: standardising is the lever for it. Handling moves it a little, because a rough cut or hot stretching lets fat go into the whey, and salt counts as dry matter.</source>
        <translation>Matière grasse et caséine passent presque entières dans le fromage ; leur rapport dans le lait fixe donc le gras sur sec : la standardisation en est le levier. Le travail le déplace un peu, car une découpe brutale ou un filage chaud laisse partir de la matière grasse dans le lactosérum, et le sel compte comme extrait sec.</translation>
    </message>
    <message>
        <source>Fat in dry matter is how much of the cheese, without its water, is fat; it is mostly decided by the milk.</source>
        <translation>Le gras sur sec dit combien du fromage, sans son eau, est matière grasse ; c'est surtout le lait qui le décide.</translation>
    </message>
    <message>
        <source>Fat in the milk goes into the cheese and gets in the way of the whey.</source>
        <translation>La matière grasse du lait passe dans le fromage et gêne le lactosérum.</translation>
    </message>
    <message>
        <source>Fat of the milk</source>
        <translation>Matière grasse du lait</translation>
    </message>
    <message>
        <source>Flocculation is the minute in which the milk first shows flakes: it tells how fast the rennet works today.</source>
        <translation>La floculation est la minute où le lait montre ses premiers flocons : elle dit à quelle vitesse la présure travaille aujourd'hui.</translation>
    </message>
    <message>
        <source>From the vat on, the cheese cools to the room by its size: a small one in an hour or two, a large wheel overnight. As long as it is warm, acid and whey go on, more in the middle than at the rim.</source>
        <translation>À partir de la cuve, le fromage refroidit vers le local selon sa taille : un petit en une heure ou deux, une grande meule en une nuit. Tant qu'il est chaud, acide et lactosérum continuent, plus au cœur qu'au bord.</translation>
    </message>
    <message>
        <source>Growth has a lowest, a best and a highest temperature and pH; between them a smooth curve gives the share of the best speed. Salt takes a further share. Above the highest temperature cells die by their own rate. Resting cells still make acid.</source>
        <translation>La croissance a une température et un pH les plus bas, les meilleurs et les plus hauts ; entre eux, une courbe lisse donne la part de la meilleure vitesse. Le sel en prend encore une part. Au-dessus de la plus haute température, les cellules meurent à leur propre rythme. Les cellules au repos font encore de l'acide.</translation>
    </message>
    <message>
        <source>Growth of the starter</source>
        <translation>Croissance du ferment</translation>
    </message>
    <message>
        <source>Half the rennet, twice the time.</source>
        <translation>Moitié moins de présure, deux fois plus de temps.</translation>
    </message>
    <message>
        <source>Hot water cooks the curd; cold water cools it and keeps it moist.</source>
        <translation>L'eau chaude cuit le caillé ; l'eau froide le refroidit et le garde humide.</translation>
    </message>
    <message>
        <source>Living cells double and double again, as long as it is warm, sweet and not too salty.</source>
        <translation>Les cellules vivantes doublent et doublent encore, tant que c'est tiède, doux et pas trop salé.</translation>
    </message>
    <message>
        <source>Microbes live in the water of a cheese and feel its salt, not the salt of the whole. So salt in moisture is the figure that governs starter, ripening and safety. A moist cheese needs more salt for the same figure; a dry-salted one is held by the share that stays in the curd, a brined one by time, size and strength of the brine.</source>
        <translation>Les microbes vivent dans l'eau d'un fromage et sentent son sel, non celui du tout. Le sel sur humidité est donc le chiffre qui régit ferment, affinage et sûreté. Un fromage humide demande plus de sel pour le même chiffre ; un fromage salé à sec tient par la part qui reste dans le caillé, un saumuré par le temps, la taille et la force de la saumure.</translation>
    </message>
    <message>
        <source>Milk that is already a little sour sets sooner and loses whey sooner.</source>
        <translation>Un lait déjà un peu acide caille plus tôt et perd plus tôt son lactosérum.</translation>
    </message>
    <message>
        <source>Moisture is the water that stays in the cheese: the more whey you get out of the curd, the drier and longer-keeping it is.</source>
        <translation>L'humidité est l'eau qui reste dans le fromage : plus on tire de lactosérum du caillé, plus il est sec et de longue garde.</translation>
    </message>
    <message>
        <source>More fat against the same casein gives more fat in dry matter and more yield, and holds whey back because globules plug the net. To keep a style's fat in dry matter, set the ratio of fat to casein, not the fat alone.</source>
        <translation>Plus de matière grasse pour la même caséine donne plus de gras sur sec et plus de rendement, et retient le lactosérum parce que les globules bouchent le filet. Pour tenir le gras sur sec d'un style, réglez le rapport de la matière grasse à la caséine, non la matière grasse seule.</translation>
    </message>
    <message>
        <source>More rennet sets the milk sooner; less sets it later.</source>
        <translation>Plus de présure caille le lait plus tôt ; moins, plus tard.</translation>
    </message>
    <message>
        <source>More starter means acid comes sooner, not that more comes in the end.</source>
        <translation>Plus de ferment, c'est l'acide plus tôt, non davantage à la fin.</translation>
    </message>
    <message>
        <source>Nearly all the casein and nine tenths of the fat stay in the curd; the rest of the weight is water with what is dissolved in it. So rich milk and a moist cheese give more. More yield from more water is no gain if the cheese then misses its style or its keeping.</source>
        <translation>Presque toute la caséine et neuf dixièmes de la matière grasse restent dans le caillé ; le reste du poids est l'eau avec ce qui y est dissous. Un lait riche et un fromage humide donnent donc plus. Plus de rendement par plus d'eau n'est pas un gain si le fromage manque alors son style ou sa garde.</translation>
    </message>
    <message>
        <source>Nothing is lost</source>
        <translation>Rien ne se perd</translation>
    </message>
    <message>
        <source>Out of the whey the curd goes on draining, souring and knitting together.</source>
        <translation>Sorti du lactosérum, le caillé continue de s'égoutter, d'acidifier et de se souder.</translation>
    </message>
    <message>
        <source>Pressing closes the curd into one piece; pressing hard too early shuts the door on the whey.</source>
        <translation>Presser ferme le caillé en une seule pièce ; presser fort trop tôt ferme la porte au lactosérum.</translation>
    </message>
    <message>
        <source>Pressure counts as kilopascals on the face, not as weight. It drives out a little more whey as long as the skin is open, and closes the skin while it does. Start light, then more. Warm, sweet, unsalted curd knits easily; cold, sour or salted curd does not.</source>
        <translation>La pression compte en kilopascals sur la face, non en poids. Elle chasse encore un peu de lactosérum tant que la peau est ouverte, et la ferme en le faisant. Commencez léger, puis davantage. Un caillé chaud, doux et sans sel se soude aisément ; froid, acide ou salé, non.</translation>
    </message>
    <message>
        <source>Protein of the milk</source>
        <translation>Protéines du lait</translation>
    </message>
    <message>
        <source>Rennet first cuts the hairs off the casein, then the bald casein clumps. The time until flakes show goes with the inverse of the dose, and shortens with warmth, lower pH and calcium. A multiple of it says when the gel is ready, whatever the milk was like; that is why it is timed rather than the clock.</source>
        <translation>La présure coupe d'abord les poils de la caséine, puis la caséine rasée s'assemble. Le temps jusqu'aux flocons suit l'inverse de la dose et raccourcit avec la chaleur, un pH plus bas et le calcium. Un multiple de ce temps dit quand le gel est prêt, quel que soit le lait ; c'est pourquoi on le mesure plutôt que l'heure.</translation>
    </message>
    <message>
        <source>Rennet sets fastest a little above 40 °C and hardly at all below 20 °C. The starter has its own best temperature: about 30 °C for mesophiles, about 42 °C for thermophiles. The temperature at setting also goes on into the first whey loss.</source>
        <translation>La présure caille le plus vite un peu au-dessus de 40 °C et presque pas sous 20 °C. Le ferment a sa propre meilleure température : environ 30 °C pour les mésophiles, environ 42 °C pour les thermophiles. La température de caillage se prolonge aussi dans la première perte de lactosérum.</translation>
    </message>
    <message>
        <source>Salt dissolves in the water of the cheese, and how salty that water is decides what can grow in it.</source>
        <translation>Le sel se dissout dans l'eau du fromage, et la salinité de cette eau décide de ce qui peut y pousser.</translation>
    </message>
    <message>
        <source>Salt dissolves on the pieces, draws whey and partly runs off with it. The moister and the more acid the curd, the more runs off. It stops the starter within hours, so it also decides how much sugar is left.</source>
        <translation>Le sel se dissout sur les grains, tire du lactosérum et part en partie avec lui. Plus le caillé est humide et acide, plus il en part. Il arrête le ferment en quelques heures et décide donc aussi du sucre qui reste.</translation>
    </message>
    <message>
        <source>Salt draws whey out and slows the starter down; not all of it stays.</source>
        <translation>Le sel tire du lactosérum et ralentit le ferment ; il n'en reste pas tout.</translation>
    </message>
    <message>
        <source>Salt goes in with the square root of time and by surface over volume, so a cheese twice as thick needs four times as long. Strength drives it up to about a fifth; stronger brine dries the rim, which then hinders it. It evens out only in the store.</source>
        <translation>Le sel entre selon la racine carrée du temps et selon la surface sur le volume ; un fromage deux fois plus épais demande donc quatre fois plus longtemps. La force le pousse jusqu'à un cinquième environ ; une saumure plus forte sèche le bord, qui le gêne alors. Il ne s'égalise qu'en cave.</translation>
    </message>
    <message>
        <source>Salt needs four times as long to go twice as deep.</source>
        <translation>Le sel demande quatre fois plus longtemps pour aller deux fois plus profond.</translation>
    </message>
    <message>
        <source>Salt on the curd</source>
        <translation>Sel sur le caillé</translation>
    </message>
    <message>
        <source>Salt spreads through the water of the cheese by diffusion: quickly in moist, warm cheese, slowly in dry and cold. A finite wheel fills by its shape. About twice as much water leaves as salt comes in.</source>
        <translation>Le sel se répand dans l'eau du fromage par diffusion : vite dans un fromage humide et chaud, lentement dans un sec et froid. Une meule finie se remplit selon sa forme. Il part environ deux fois plus d'eau qu'il n'entre de sel.</translation>
    </message>
    <message>
        <source>Salt wandering in</source>
        <translation>Le sel qui chemine</translation>
    </message>
    <message>
        <source>Salt wanders into the cheese and water wanders out, quickly at the rim and slowly to the heart.</source>
        <translation>Le sel chemine dans le fromage et l'eau en sort, vite au bord et lentement vers le cœur.</translation>
    </message>
    <message>
        <source>Size of cut</source>
        <translation>Taille du grain</translation>
    </message>
    <message>
        <source>Size sets how fast the cheese cools, how deep the brine must go, and how many kilopascals a load gives: the same weight on twice the face is half the pressure.</source>
        <translation>La taille fixe la vitesse à laquelle le fromage refroidit, la profondeur où doit aller la saumure, et combien de kilopascals donne une charge : le même poids sur le double de face, c'est la moitié de la pression.</translation>
    </message>
    <message>
        <source>Small pieces have more skin for their size, so whey gets out faster and the cheese ends drier.</source>
        <translation>De petits grains ont plus de peau pour leur taille ; le lactosérum sort donc plus vite et le fromage finit plus sec.</translation>
    </message>
    <message>
        <source>Stages with a set length add up to themselves; stages that wait for a pH or for whey take what the vat takes. A warmer vat, more starter or a riper milk shorten the waiting. Every minute more in warmth also dries and sours the curd, so hurry is never free.</source>
        <translation>Les étapes de durée fixe s'additionnent ; celles qui attendent un pH ou du lactosérum prennent ce que prend la cuve. Une cuve plus chaude, plus de ferment ou un lait plus mûr raccourcissent l'attente. Chaque minute de plus au chaud sèche et acidifie aussi le caillé ; la hâte n'est donc jamais gratuite.</translation>
    </message>
    <message>
        <source>Stirring</source>
        <translation>Brassage</translation>
    </message>
    <message>
        <source>Stirring keeps the pieces apart, so all of them can give whey.</source>
        <translation>Le brassage garde les grains séparés, pour que tous donnent du lactosérum.</translation>
    </message>
    <message>
        <source>Sugar moves from the curd into the thinner whey until both are even; that takes minutes and longer for large pieces. Less sugar means a higher pH the next day and a pliable body. Warm water dries the curd as cooking does; cold water keeps whey in.</source>
        <translation>Le sucre passe du caillé dans le lactosérum plus pauvre jusqu'à égalité ; cela prend des minutes, et plus pour de gros grains. Moins de sucre, c'est un pH plus haut le lendemain et un corps souple. L'eau chaude sèche le caillé comme une cuisson ; l'eau froide y garde le lactosérum.</translation>
    </message>
    <message>
        <source>Temperature of curd in whey</source>
        <translation>Température du caillé dans le lactosérum</translation>
    </message>
    <message>
        <source>Temperature of ripening and setting</source>
        <translation>Température de maturation et de caillage</translation>
    </message>
    <message>
        <source>Temperature of the room</source>
        <translation>Température du local</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>Température de l'eau</translation>
    </message>
    <message>
        <source>The brine</source>
        <translation>La saumure</translation>
    </message>
    <message>
        <source>The curd squeezes itself, hard at first and ever more gently.</source>
        <translation>Le caillé se presse lui-même, fort d'abord et de plus en plus doucement.</translation>
    </message>
    <message>
        <source>The curd swallows a lot of acid before it tastes sour.</source>
        <translation>Le caillé avale beaucoup d'acide avant d'avoir un goût acide.</translation>
    </message>
    <message>
        <source>The form</source>
        <translation>Le moule</translation>
    </message>
    <message>
        <source>The make ends when the cheese goes to the store; slow acid or a long press makes the day longer.</source>
        <translation>La fabrication finit quand le fromage va en cave ; un acide lent ou une longue presse allonge la journée.</translation>
    </message>
    <message>
        <source>The pH at draining and at milling are the two gates of a make: they fix the calcium that stays and the sugar that is left. A tenth of a pH costs ten minutes to half an hour, depending on how fast the acid comes.</source>
        <translation>Le pH au soutirage et au broyage sont les deux portes d'une fabrication : ils fixent le calcium qui reste et le sucre qui demeure. Un dixième de pH coûte de dix minutes à une demi-heure, selon la vitesse de l'acide.</translation>
    </message>
    <message>
        <source>The press</source>
        <translation>La presse</translation>
    </message>
    <message>
        <source>The starter turns milk sugar into acid; the pH a day later tells how sour the young cheese has become.</source>
        <translation>Le ferment change le sucre du lait en acide ; le pH un jour plus tard dit combien le jeune fromage est devenu acide.</translation>
    </message>
    <message>
        <source>The time until flakes show is a short lag plus a constant over the strength of the rennet in the milk, corrected for temperature, pH, calcium, animal and coagulant. Within the doses used it holds well; in overheated or very cold milk it does not.</source>
        <translation>Le temps jusqu'aux flocons est une courte latence plus une constante divisée par la force de la présure dans le lait, corrigée pour la température, le pH, le calcium, l'animal et le coagulant. Cela tient bien aux doses employées ; non dans un lait surchauffé ou très froid.</translation>
    </message>
    <message>
        <source>The vat comes to the mean of what is in it, by mass and heat held. Hot water is a way of cooking without a jacket; cold water stops the whey running and slows the starter.</source>
        <translation>La cuve va à la moyenne de ce qu'elle contient, selon la masse et la chaleur tenue. L'eau chaude est une façon de cuire sans enveloppe ; l'eau froide arrête le lactosérum et ralentit le ferment.</translation>
    </message>
    <message>
        <source>The water above what the casein holds in the end leaves at a rate that grows with warmth, acid, small pieces and handling, and slows as the curd closes. Fat hinders it; a skin from early pressing or from fast heating hinders it more.</source>
        <translation>L'eau en trop de ce que la caséine tient à la fin part à une vitesse qui croît avec la chaleur, l'acide, les petits grains et le travail, et ralentit quand le caillé se ferme. La matière grasse la gêne ; une peau due à une presse trop précoce ou à une chauffe trop rapide la gêne davantage.</translation>
    </message>
    <message>
        <source>Time in whey</source>
        <translation>Temps dans le lactosérum</translation>
    </message>
    <message>
        <source>Time lets the curd go on giving whey and the starter go on making acid.</source>
        <translation>Le temps laisse le caillé continuer à donner du lactosérum et le ferment à faire de l'acide.</translation>
    </message>
    <message>
        <source>Time out of the whey</source>
        <translation>Temps hors du lactosérum</translation>
    </message>
    <message>
        <source>Time to flocculation goes with the inverse of the dose. If you cut by a multiple, firmness at the cut stays the same and only the clock moves, and with it a little acid. Too much leaves bitterness in a long-ripened cheese; too little lets the acid run ahead of the set.</source>
        <translation>Le temps de floculation suit l'inverse de la dose. Si l'on décaille à un multiple, la fermeté reste la même et seule l'heure bouge, et avec elle un peu d'acide. Trop laisse de l'amertume dans un fromage de longue garde ; trop peu laisse l'acide devancer le caillage.</translation>
    </message>
    <message>
        <source>Twice the cells are one doubling ahead, about an hour for mesophiles. Everything that waits for a pH comes earlier, and the curd is sourer when the whey leaves: less calcium, more whey out. How sour the cheese ends is set by the sugar it keeps.</source>
        <translation>Deux fois plus de cellules, c'est un doublement d'avance, environ une heure pour les mésophiles. Tout ce qui attend un pH vient plus tôt, et le caillé est plus acide quand le lactosérum part : moins de calcium, plus de lactosérum. L'acidité finale, c'est le sucre gardé qui la fixe.</translation>
    </message>
    <message>
        <source>Waiting for more acid means more time, less water and less calcium.</source>
        <translation>Attendre plus d'acide, c'est plus de temps, moins d'eau et moins de calcium.</translation>
    </message>
    <message>
        <source>Waiting longer gives a firmer gel that breaks into fewer crumbs.</source>
        <translation>Attendre plus longtemps donne un gel plus ferme qui se brise en moins de miettes.</translation>
    </message>
    <message>
        <source>Warm curd shrinks harder, like a sponge being squeezed, and lets go of more whey.</source>
        <translation>Un caillé chaud se contracte plus fort, comme une éponge qu'on presse, et lâche plus de lactosérum.</translation>
    </message>
    <message>
        <source>Warm milk sets faster and wakes the starter; too warm or too cold stops both.</source>
        <translation>Un lait chaud caille plus vite et éveille le ferment ; trop chaud ou trop froid arrête les deux.</translation>
    </message>
    <message>
        <source>Water on the curd</source>
        <translation>Eau sur le caillé</translation>
    </message>
    <message>
        <source>Water rinses the milk sugar out, so less acid can come later and the cheese stays sweet and bendy.</source>
        <translation>L'eau emporte le sucre du lait ; moins d'acide vient alors plus tard et le fromage reste doux et souple.</translation>
    </message>
    <message>
        <source>Water, fat, casein, whey protein, sugar with its acid, ash and salt are each followed from milk to cheese. Yield and composition are what is left when the whey is taken off; there is no yield formula behind them.</source>
        <translation>Eau, matière grasse, caséine, protéines solubles, sucre avec son acide, cendres et sel sont chacun suivis du lait au fromage. Rendement et composition sont ce qui reste quand on ôte le lactosérum ; il n'y a pas de formule de rendement derrière.</translation>
    </message>
    <message>
        <source>What was in the milk is in the cheese or in the whey, to the gram.</source>
        <translation>Ce qui était dans le lait est dans le fromage ou dans le lactosérum, au gramme près.</translation>
    </message>
    <message>
        <source>When to cut</source>
        <translation>Quand décailler</translation>
    </message>
    <message>
        <source>Whey drawn</source>
        <translation>Lactosérum tiré</translation>
    </message>
    <message>
        <source>Whey leaves fast at first and ever more slowly as the curd closes, so the first minutes after the cut count most. Acid goes the other way: it comes slowly at first and faster later. Longer means drier and sourer together.</source>
        <translation>Le lactosérum part vite d'abord, puis de plus en plus lentement à mesure que le caillé se ferme ; les premières minutes après le décaillage comptent donc le plus. L'acide fait l'inverse : lent d'abord, plus rapide ensuite. Plus long, c'est plus sec et plus acide à la fois.</translation>
    </message>
    <message>
        <source>Whey leaves through the surface. Halving the edge of the pieces doubles the surface of the same curd, so the whey runs faster and the curd also cooks through sooner. Too small, and fat and dust go with the whey: yield falls and the whey turns white.</source>
        <translation>Le lactosérum part par la surface. Diviser par deux l'arête des grains double la surface du même caillé ; il coule donc plus vite et cuit aussi plus tôt à cœur. Trop petits, matière grasse et fines partent avec lui : le rendement baisse et le lactosérum blanchit.</translation>
    </message>
    <message>
        <source>Whey leaving the curd</source>
        <translation>Le lactosérum qui quitte le caillé</translation>
    </message>
    <message>
        <source>Whey that is drawn takes its sugar and its warmth along.</source>
        <translation>Le lactosérum que l'on tire emporte son sucre et sa chaleur.</translation>
    </message>
    <message>
        <source>With less whey in the vat, water added later thins the rest further, and the curd cools faster. What stays in the curd itself goes on souring; drawing the whey does not stop that.</source>
        <translation>Avec moins de lactosérum en cuve, l'eau ajoutée ensuite dilue davantage le reste, et le caillé refroidit plus vite. Ce qui reste dans le caillé continue d'acidifier ; tirer le lactosérum n'y met pas fin.</translation>
    </message>
    <message>
        <source>Without whey around it, the curd loses only what it squeezes out itself, while the acid made in it can no longer leave. Stacking and turning press it gently and stretch it; cooling slows both.</source>
        <translation>Sans lactosérum autour, le caillé ne perd que ce qu'il chasse lui-même, et l'acide qui s'y fait ne peut plus partir. La cheddarisation le presse doucement et l'étire ; le froid ralentit les deux.</translation>
    </message>
    <message>
        <source>Yield is how much cheese comes from a hundred kilograms of milk: casein and fat give it, water adds to it, crumbs take from it.</source>
        <translation>Le rendement est le fromage que donnent cent kilogrammes de lait : caséine et matière grasse le font, l'eau l'augmente, les miettes le diminuent.</translation>
    </message>
    <message>
        <source>pH and age of the milk</source>
        <translation>pH et âge du lait</translation>
    </message>
    <message>
        <source>pH to wait for</source>
        <translation>pH à attendre</translation>
    </message>
</context>
<context>
    <name>texture</name>
    <message>
        <source>a body that is weak when fresh is pasty when aged</source>
        <translation>un corps faible à l'état frais devient pâteux en vieillissant</translation>
    </message>
    <message>
        <source>a firm body of pH 5.0-5.2 shortens with age</source>
        <translation>un corps ferme à pH 5,0-5,2 devient court avec l'âge</translation>
    </message>
    <message>
        <source>a higher pH makes it more pliable, a lower one short</source>
        <translation>un pH plus haut le rend plus souple, un plus bas court</translation>
    </message>
    <message>
        <source>above 67 % moisture in non-fat substance it is a soft cheese by class</source>
        <translation>au-dessus de 67 % d'humidité du fromage dégraissé, c'est un fromage mou par sa classe</translation>
    </message>
    <message>
        <source>acid curd that has lost its calcium breaks short and brittle, and crumbles</source>
        <translation>un caillé acide qui a perdu son calcium casse court et s'effrite</translation>
    </message>
    <message>
        <source>below pH 5.0 in the first days the body turns short and crumbly</source>
        <translation>sous pH 5,0 dans les premiers jours le corps devient court et friable</translation>
    </message>
    <message>
        <source>between pH 5.2 and 5.4 curd bends furthest before it breaks</source>
        <translation>entre pH 5,2 et 5,4 le caillé plie le plus avant de rompre</translation>
    </message>
    <message>
        <source>drain and form at a higher pH, so that more calcium stays; less starter, or more washing</source>
        <translation>soutirez et moulez à un pH plus haut, pour garder plus de calcium ; moins de ferment, ou plus de lavage</translation>
    </message>
    <message>
        <source>drain at a lower pH</source>
        <translation>soutirez à un pH plus bas</translation>
    </message>
    <message>
        <source>drain longer or warmer</source>
        <translation>égouttez plus longtemps ou plus chaud</translation>
    </message>
    <message>
        <source>drained at a high pH it keeps more calcium and is firmer and more elastic</source>
        <translation>soutiré à un pH haut, il garde plus de calcium et est plus ferme et élastique</translation>
    </message>
    <message>
        <source>drier curd, or a little more acid</source>
        <translation>un caillé plus sec, ou un peu plus d'acide</translation>
    </message>
    <message>
        <source>drier curd, or eat it young</source>
        <translation>un caillé plus sec, ou à manger jeune</translation>
    </message>
    <message>
        <source>drier curd: smaller cut, warmer or longer cook, longer stirring out</source>
        <translation>un caillé plus sec : grain plus petit, chauffage plus chaud ou plus long, brassage à sec plus long</translation>
    </message>
    <message>
        <source>drier curd; then the acid stops higher too</source>
        <translation>un caillé plus sec ; l'acide s'arrête alors aussi plus haut</translation>
    </message>
    <message>
        <source>drier than its kind: hard, “corky”, slow to ripen</source>
        <translation>plus sec que les siens : dur, comme du liège, lent à affiner</translation>
    </message>
    <message>
        <source>dry and acid together crumble</source>
        <translation>sec et acide ensemble s'effritent</translation>
    </message>
    <message>
        <source>eat it younger, or make it a little sweeter</source>
        <translation>à manger plus jeune, ou à faire un peu plus doux</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>ferme</translation>
    </message>
    <message>
        <source>keep more moisture</source>
        <translation>gardez plus d'humidité</translation>
    </message>
    <message>
        <source>keep more moisture: larger cut, cooler or shorter cook, less stirring dry</source>
        <translation>gardez plus d'humidité : grain plus gros, chauffage moins chaud ou plus court, moins de brassage à sec</translation>
    </message>
    <message>
        <source>keep more moisture: larger cut, shorter or cooler cook</source>
        <translation>gardez plus d'humidité : grain plus gros, chauffage plus court ou moins chaud</translation>
    </message>
    <message>
        <source>lean cheese is corky and rubbery</source>
        <translation>un fromage maigre est comme du liège et caoutchouteux</translation>
    </message>
    <message>
        <source>less fat in the milk</source>
        <translation>moins de matière grasse dans le lait</translation>
    </message>
    <message>
        <source>less salt or a shorter brine</source>
        <translation>moins de sel ou une saumure plus courte</translation>
    </message>
    <message>
        <source>less than about 53 % moisture in non-fat substance is a hard cheese by class</source>
        <translation>moins d'environ 53 % d'humidité du fromage dégraissé, c'est un fromage dur par sa classe</translation>
    </message>
    <message>
        <source>little acid in the first days leaves a corky, rubbery body</source>
        <translation>peu d'acide les premiers jours laisse un corps de liège, caoutchouteux</translation>
    </message>
    <message>
        <source>moist and sweet it turns pasty</source>
        <translation>humide et doux, il devient pâteux</translation>
    </message>
    <message>
        <source>moister than its kind: soft, quick to sour and short of life</source>
        <translation>plus humide que les siens : mou, prompt à aigrir et de courte garde</translation>
    </message>
    <message>
        <source>more acid makes it short, less acid rubbery</source>
        <translation>plus d'acide le rend court, moins d'acide caoutchouteux</translation>
    </message>
    <message>
        <source>more fat in the milk; leave more moisture in a lean cheese</source>
        <translation>plus de matière grasse dans le lait ; laissez plus d'humidité dans un fromage maigre</translation>
    </message>
    <message>
        <source>more starter or time before salt and cold</source>
        <translation>plus de ferment ou de temps avant le sel et le froid</translation>
    </message>
    <message>
        <source>much calcium makes it more elastic</source>
        <translation>beaucoup de calcium le rend plus élastique</translation>
    </message>
    <message>
        <source>much fat makes a weak body</source>
        <translation>beaucoup de matière grasse fait un corps faible</translation>
    </message>
    <message>
        <source>much salt makes a body crumbly</source>
        <translation>beaucoup de sel rend le corps friable</translation>
    </message>
    <message>
        <source>pH near 5.1 with about 600 mmol of calcium is the firm, smooth body of Cheddar</source>
        <translation>un pH près de 5,1 avec environ 600 mmol de calcium, c'est le corps ferme et lisse du Cheddar</translation>
    </message>
    <message>
        <source>pasty</source>
        <translation>pâteux</translation>
    </message>
    <message>
        <source>pliable</source>
        <translation>souple</translation>
    </message>
    <message>
        <source>rubbery</source>
        <translation>caoutchouteux</translation>
    </message>
    <message>
        <source>short</source>
        <translation>court</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>mou</translation>
    </message>
    <message>
        <source>stop the acid higher: less starter, earlier salt, more washing or a drier curd</source>
        <translation>arrêtez l'acide plus haut : moins de ferment, sel plus tôt, plus de lavage ou un caillé plus sec</translation>
    </message>
    <message>
        <source>time weakens it within weeks; more acid, or drain at a lower pH</source>
        <translation>le temps l'affaiblit en quelques semaines ; plus d'acide, ou soutirez à un pH plus bas</translation>
    </message>
    <message>
        <source>too much moisture and acid together go soft and sticky</source>
        <translation>trop d'humidité et d'acide ensemble rendent mou et collant</translation>
    </message>
    <message>
        <source>young, sweet and full of calcium: tough, rubbery, curdy - the body that holds eyes</source>
        <translation>jeune, doux et plein de calcium : coriace, caoutchouteux - le corps qui tient les ouvertures</translation>
    </message>
</context>
<context>
    <name>unit</name>
    <message>
        <source>% RH</source>
        <translation>% HR</translation>
    </message>
    <message>
        <source>% humidity</source>
        <translation>% d'humidité</translation>
    </message>
    <message>
        <source>% lactic acid</source>
        <translation>% d'acide lactique</translation>
    </message>
    <message>
        <source>% moisture</source>
        <translation>% d'humidité</translation>
    </message>
    <message>
        <source>% of curd</source>
        <translation>% du caillé</translation>
    </message>
    <message>
        <source>% of milk</source>
        <translation>% du lait</translation>
    </message>
    <message>
        <source>% salt in moisture</source>
        <translation>% de sel dans l'humidité</translation>
    </message>
    <message>
        <source>/mL</source>
        <translation>/mL</translation>
    </message>
    <message>
        <source>1/min</source>
        <translation>1/min</translation>
    </message>
    <message>
        <source>1/min and kPa at 5 kg water per kg casein and 22 °C, hung, in lumps of 40 mm, without rennet</source>
        <translation>1/min et kPa à 5 kg d'eau par kg de caséine et 22 °C, suspendu, en morceaux de 40 mm, sans présure</translation>
    </message>
    <message>
        <source>1/min at 40 kPa</source>
        <translation>1/min à 40 kPa</translation>
    </message>
    <message>
        <source>1/min at 60 °C</source>
        <translation>1/min à 60 °C</translation>
    </message>
    <message>
        <source>1/min per unit of deficit and at 1 m²/kg</source>
        <translation>1/min par unité de déficit et à 1 m²/kg</translation>
    </message>
    <message>
        <source>1/pH</source>
        <translation>1/pH</translation>
    </message>
    <message>
        <source>1/pH above pH 4.6</source>
        <translation>1/pH au-dessus de pH 4,6</translation>
    </message>
    <message>
        <source>10⁹ cells per mL</source>
        <translation>10⁹ cellules par mL</translation>
    </message>
    <message>
        <source>1e9 cells per mL of water in milk</source>
        <translation>1e9 cellules par mL d'eau du lait</translation>
    </message>
    <message>
        <source>BTU/h</source>
        <translation>BTU/h</translation>
    </message>
    <message>
        <source>CFU/g</source>
        <translation>UFC/g</translation>
    </message>
    <message>
        <source>IMCU min/L</source>
        <translation>IMCU min/L</translation>
    </message>
    <message>
        <source>IMCU/mL</source>
        <translation>IMCU/mL</translation>
    </message>
    <message>
        <source>J/mol</source>
        <translation>J/mol</translation>
    </message>
    <message>
        <source>Pa</source>
        <translation>Pa</translation>
    </message>
    <message>
        <source>US cup</source>
        <translation>US cup</translation>
    </message>
    <message>
        <source>US fl oz</source>
        <translation>fl oz US</translation>
    </message>
    <message>
        <source>US gal</source>
        <translation>gal US</translation>
    </message>
    <message>
        <source>US pt</source>
        <translation>pt US</translation>
    </message>
    <message>
        <source>US qt</source>
        <translation>qt US</translation>
    </message>
    <message>
        <source>US tbsp</source>
        <translation>US tbsp</translation>
    </message>
    <message>
        <source>US tsp</source>
        <translation>US tsp</translation>
    </message>
    <message>
        <source>W/m² K</source>
        <translation>W/m² K</translation>
    </message>
    <message>
        <source>W/m²K</source>
        <translation>W/m²K</translation>
    </message>
    <message>
        <source>added per unit of disturbance in a drained bed</source>
        <translation>ajouté par unité de remuage d'un lit soutiré</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>cL</source>
        <translation>cL</translation>
    </message>
    <message>
        <source>cells per kg serum against the curd's per kg serum they came in with</source>
        <translation>cellules par kg de sérum, face à celles du caillé</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>cm²</source>
        <translation>cm²</translation>
    </message>
    <message>
        <source>cm²/d at 12 °C and 35 % moisture</source>
        <translation>cm²/j à 12 °C et 35 % d'humidité</translation>
    </message>
    <message>
        <source>cm²/d per point of moisture</source>
        <translation>cm²/j par point d'humidité</translation>
    </message>
    <message>
        <source>d</source>
        <translation>j</translation>
    </message>
    <message>
        <source>dL</source>
        <translation>dL</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>depth of heat path over that of a slab with the same volume/surface</source>
        <translation>chemin de la chaleur face à celui d'une plaque de même volume/surface</translation>
    </message>
    <message>
        <source>early load over highest load</source>
        <translation>première charge sur la plus forte</translation>
    </message>
    <message>
        <source>fat/casein</source>
        <translation>matière grasse/caséine</translation>
    </message>
    <message>
        <source>flocculation times</source>
        <translation>temps de floculation</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>ft²</source>
        <translation>ft²</translation>
    </message>
    <message>
        <source>g/kg</source>
        <translation>g/kg</translation>
    </message>
    <message>
        <source>g/mL</source>
        <translation>g/mL</translation>
    </message>
    <message>
        <source>hL</source>
        <translation>hL</translation>
    </message>
    <message>
        <source>imp fl oz</source>
        <translation>fl oz imp</translation>
    </message>
    <message>
        <source>imp gal</source>
        <translation>gal imp</translation>
    </message>
    <message>
        <source>imp pt</source>
        <translation>pt imp</translation>
    </message>
    <message>
        <source>imp qt</source>
        <translation>qt imp</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>kJ/kg K</source>
        <translation>kJ/kg K</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>kPa at 100 mm</source>
        <translation>kPa à 100 mm</translation>
    </message>
    <message>
        <source>kPa at 50 °C</source>
        <translation>kPa à 50 °C</translation>
    </message>
    <message>
        <source>kW</source>
        <translation>kW</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>kg ash per kg colloidal calcium</source>
        <translation>kg de cendres par kg de calcium colloïdal</translation>
    </message>
    <message>
        <source>kg per 100 kg milk</source>
        <translation>kg pour 100 kg de lait</translation>
    </message>
    <message>
        <source>kg per 100 kg of cheese and hour</source>
        <translation>kg pour 100 kg de fromage et par heure</translation>
    </message>
    <message>
        <source>kg per kg milk of 3.8 % fat</source>
        <translation>kg par kg de lait à 3,8 % de matière grasse</translation>
    </message>
    <message>
        <source>kg salt per kg water</source>
        <translation>kg de sel par kg d'eau</translation>
    </message>
    <message>
        <source>kg water per kg casein</source>
        <translation>kg d'eau par kg de caséine</translation>
    </message>
    <message>
        <source>kg water per kg casein at 1 kPa</source>
        <translation>kg d'eau par kg de caséine à 1 kPa</translation>
    </message>
    <message>
        <source>kg water per kg casein at 60 °C</source>
        <translation>kg d'eau par kg de caséine à 60 °C</translation>
    </message>
    <message>
        <source>kg water per kg protein of the curd at 1 kPa</source>
        <translation>kg d'eau par kg de protéine du caillé à 1 kPa</translation>
    </message>
    <message>
        <source>kg water per kg salt given off</source>
        <translation>kg d'eau par kg de sel cédé</translation>
    </message>
    <message>
        <source>kg water per kg salt taken in, dry or from a brine of 20 %</source>
        <translation>kg d'eau par kg de sel pris, à sec ou d'une saumure à 20 %</translation>
    </message>
    <message>
        <source>kg/L</source>
        <translation>kg/L</translation>
    </message>
    <message>
        <source>kg/cm²</source>
        <translation>kg/cm²</translation>
    </message>
    <message>
        <source>kg/kg</source>
        <translation>kg/kg</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>logarithm of pressure</source>
        <translation>logarithme de la pression</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>mbar</source>
        <translation>mbar</translation>
    </message>
    <message>
        <source>mg</source>
        <translation>mg</translation>
    </message>
    <message>
        <source>mg per 100 g</source>
        <translation>mg pour 100 g</translation>
    </message>
    <message>
        <source>mg per g protein</source>
        <translation>mg par g de protéine</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>min at 6 mm edge</source>
        <translation>min à 6 mm de côté</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mmol per g casein</source>
        <translation>mmol par g de caséine</translation>
    </message>
    <message>
        <source>mmol per kg</source>
        <translation>mmol par kg</translation>
    </message>
    <message>
        <source>mmol per kg milk</source>
        <translation>mmol par kg de lait</translation>
    </message>
    <message>
        <source>mmol per kg solids-not-fat</source>
        <translation>mmol par kg d'extrait sec dégraissé</translation>
    </message>
    <message>
        <source>mol H+ freed per mol calcium added</source>
        <translation>mol de H+ libérée par mol de calcium ajoutée</translation>
    </message>
    <message>
        <source>mol lactate per 1e9 cells/mL of growth and kg milk</source>
        <translation>mol de lactate par 1e9 cellules/mL de croissance et kg de lait</translation>
    </message>
    <message>
        <source>mol per kg curd water</source>
        <translation>mol par kg d'eau du caillé</translation>
    </message>
    <message>
        <source>mol undissociated lactic acid per kg water</source>
        <translation>mol d'acide lactique non dissocié par kg d'eau</translation>
    </message>
    <message>
        <source>month</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>m³</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>of 1</source>
        <translation>sur 1</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH by which hot whey flocculates sweeter than hot milk</source>
        <translation>pH dont le lactosérum chaud flocule plus haut que le lait chaud</translation>
    </message>
    <message>
        <source>pH per unit of whey protein denatured</source>
        <translation>pH par unité de protéines du sérum dénaturées</translation>
    </message>
    <message>
        <source>pH/°C above 20 °C</source>
        <translation>pH/°C au-dessus de 20 °C</translation>
    </message>
    <message>
        <source>per g CaCl2/kg milk</source>
        <translation>par g de CaCl2/kg de lait</translation>
    </message>
    <message>
        <source>per unit of fat/casein above 1.35</source>
        <translation>par unité de matière grasse/caséine au-dessus de 1,35</translation>
    </message>
    <message>
        <source>per unit of stirring above gentle</source>
        <translation>par unité de brassage au-delà du doux</translation>
    </message>
    <message>
        <source>per °C heated too fast</source>
        <translation>par °C chauffé trop vite</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>power of 40 mm / edge</source>
        <translation>puissance de 40 mm / côté</translation>
    </message>
    <message>
        <source>power of 9.5 mm / edge</source>
        <translation>puissance de 9,5 mm / côté</translation>
    </message>
    <message>
        <source>power of kPa by which that end point falls</source>
        <translation>puissance des kPa dont ce point final baisse</translation>
    </message>
    <message>
        <source>power of milk fat / 3.8 %</source>
        <translation>puissance de la matière grasse du lait / 3,8 %</translation>
    </message>
    <message>
        <source>power of the effect of size</source>
        <translation>puissance de l’effet de la taille</translation>
    </message>
    <message>
        <source>power of the water by which its permeability falls</source>
        <translation>puissance de l'eau selon laquelle sa perméabilité baisse</translation>
    </message>
    <message>
        <source>power of the water shrinkage by which the ceiling rises in curd</source>
        <translation>puissance du retrait d'eau dont le plafond monte dans le caillé</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>relative time</source>
        <translation>temps relatif</translation>
    </message>
    <message>
        <source>relative time after long cold storage</source>
        <translation>temps relatif après un long stockage au froid</translation>
    </message>
    <message>
        <source>relative time per unit whey protein denatured</source>
        <translation>temps relatif par unité de protéines du sérum dénaturées</translation>
    </message>
    <message>
        <source>score</source>
        <translation>note</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>share more water per unit of whey protein denatured</source>
        <translation>part d'eau en plus par unité de protéines du sérum dénaturées</translation>
    </message>
    <message>
        <source>share of curd fat in a whole stretch, curd at 60 °C</source>
        <translation>part de la matière grasse du caillé en un filage entier, caillé à 60 °C</translation>
    </message>
    <message>
        <source>share of dry salt that the curd takes in rather than the running brine</source>
        <translation>part du sel à sec que prend le caillé plutôt que la saumure qui coule</translation>
    </message>
    <message>
        <source>share of galactose in the feed of the rods at equal amounts</source>
        <translation>part de galactose dans ce que mangent les bâtonnets, à quantités égales</translation>
    </message>
    <message>
        <source>share of milk calcium</source>
        <translation>part du calcium du lait</translation>
    </message>
    <message>
        <source>share of that of calf rennet</source>
        <translation>part de celui de la présure de veau</translation>
    </message>
    <message>
        <source>share of the cheese water that takes part</source>
        <translation>part de l'eau du fromage qui participe</translation>
    </message>
    <message>
        <source>share of the growing rate</source>
        <translation>part de la vitesse en croissance</translation>
    </message>
    <message>
        <source>share of the hung rate, kPa for kPa</source>
        <translation>part de la vitesse suspendu, à kPa égaux</translation>
    </message>
    <message>
        <source>share of the outflow a closed skin takes away</source>
        <translation>part de l'écoulement qu'ôte une croûte fermée</translation>
    </message>
    <message>
        <source>share of the outflow a full film takes away</source>
        <translation>part de l'écoulement qu'ôte une peau entière</translation>
    </message>
    <message>
        <source>share of the rate in a form, kPa for kPa</source>
        <translation>part de la vitesse en moule, à kPa égaux</translation>
    </message>
    <message>
        <source>share of the rate lost as all whey protein is denatured</source>
        <translation>part de la vitesse perdue quand toutes les protéines solubles sont dénaturées</translation>
    </message>
    <message>
        <source>share of the rate that rennet adds once it has clotted the milk well</source>
        <translation>part de la vitesse que la présure ajoute une fois le lait bien caillé</translation>
    </message>
    <message>
        <source>share of unfolded whey protein that joins an acid-and-heat curd</source>
        <translation>part des protéines du sérum dépliées qui rejoint un caillé acide et chaud</translation>
    </message>
    <message>
        <source>share of whey protein denatured</source>
        <translation>part des protéines solubles dénaturées</translation>
    </message>
    <message>
        <source>share per unit of whey protein denatured</source>
        <translation>part par unité de protéines du sérum dénaturées</translation>
    </message>
    <message>
        <source>wk</source>
        <translation>sem</translation>
    </message>
    <message>
        <source>°C for e times as much</source>
        <translation>°C pour e fois plus</translation>
    </message>
    <message>
        <source>°C/min</source>
        <translation>°C/min</translation>
    </message>
    <message>
        <source>°F/min</source>
        <translation>°F/min</translation>
    </message>
    <message>
        <source>°SH</source>
        <translation>°SH</translation>
    </message>
    <message>
        <source>°Th</source>
        <translation>°Th</translation>
    </message>
</context>
</TS>
